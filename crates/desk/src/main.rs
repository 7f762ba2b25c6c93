//! Starts Tankard.

fn main() -> std::process::ExitCode {
    tankard::run()
}
