"""What the running window costs: tests/scripts/window.py PROGRAM FARM [NAME=KEYS ...]

Needs a screen (xvfb-run -a -s "-screen 0 1366x768x24") and xdotool. Each figure is processor time of all threads of the program until it is
still again, since other work on the machine hardly touches that, and beside it the time by the clock. KEYS are keys for xdotool apart by
commas ("ctrl+2"), "type:TEXT", or "click:X,Y" in a window of 1366x768. The farm is copied first, and nothing is saved.
"""
import os, shutil, subprocess, sys, tempfile, time

TICK = 1000 / os.sysconf("SC_CLK_TCK")
program, farm = sys.argv[1:3]
acts = [act.split("=", 1) for act in sys.argv[3:]] or [
    ("fields", "ctrl+1"), ("season log", "ctrl+3"), ("shed", "ctrl+4"), ("tank loads", "ctrl+2"), ("undo", "ctrl+z"),
]


def spent(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) * TICK


def memory(pid):
    rows = dict(line.split(":", 1) for line in open(f"/proc/{pid}/status") if ":" in line)
    return ", ".join(f"{name} {int(rows[name].split()[0]) // 1024} MB" for name in ("VmRSS", "RssAnon", "VmHWM"))


def still(pid, begun, before, quiet=2.0, most=90):
    """Waits until next to nothing is spent for some seconds, a blinking cursor apart; gives what was spent until then, without that."""
    samples = [(begun, before)]
    while True:
        time.sleep(0.1)
        samples.append((time.time(), spent(pid)))
        now, cost = samples[-1]
        at, then = next((sample for sample in samples if now - sample[0] <= quiet))
        if now - begun > 2 * quiet and cost - then <= 90 * quiet or now - begun > most:
            rate = (cost - then) / max(now - at, 0.1)
            return at - begun, cost - before - rate * (now - begun), rate


with tempfile.TemporaryDirectory() as folder:
    path = shutil.copy(farm, folder)
    told = open(os.path.join(folder, "told"), "w+")
    begun = time.time()
    window = subprocess.Popen(
        [program, path, "--view", "tank-loads", "--size", "1366x768"],
        stderr=told, env=os.environ | {"XDG_CONFIG_HOME": folder, "RUST_LOG": "info"},
    )
    pid = window.pid
    try:
        while "first frame" not in open(told.name).read():
            time.sleep(0.02)
        print(f"{'first frame':<28} {time.time() - begun:8.2f} s  {spent(pid):8.0f} ms of processors")
        clock, cost, _ = still(pid, begun, 0)
        print(f"{'all there':<28} {clock:8.2f} s  {cost:8.0f} ms of processors  {memory(pid)}")
        subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Tankard", "windowfocus"], capture_output=True)
        still(pid, time.time(), spent(pid))
        before = spent(pid)
        time.sleep(15)
        print(f"{'idle over 15 s':<28} {'':10}  {spent(pid) - before:8.0f} ms of processors")
        for name, keys in acts:
            before, begun = spent(pid), time.time()
            if keys.startswith("type:"):
                subprocess.run(["xdotool", "type", "--delay", "400", keys[5:]])
            elif keys.startswith("click:"):
                subprocess.run(["xdotool", "mousemove", *keys[6:].split(","), "click", "1"])
            else:
                subprocess.run(["xdotool", "key", *keys.split(",")])
            clock, cost, rate = still(pid, begun, before)
            print(f"{name:<28} {clock:8.2f} s  {cost:8.0f} ms of processors, then {rate:.0f} ms a second  {memory(pid)}")
            if os.environ.get("PICTURES"):
                subprocess.run(["import", "-window", "root", os.path.join(os.environ["PICTURES"], f"{name}.png")])
    finally:
        window.kill()
