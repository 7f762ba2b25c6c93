//! What the program is: its version, its licence, and what it is built from under which licences.

use std::sync::LazyLock;

use egui::{CentralPanel, Frame, Label, Margin, ScrollArea, TextStyle, Ui};
use tankard_core::t;

use super::Desk;
use crate::look;
use crate::parts::boxes;

/// The licence of the program itself.
const LICENCE: &str = include_str!("../../../../LICENSE");
/// The packages that it is built from.
const PACKAGES: &str = include_str!("../../../../assets/third-party/packages.csv");
/// Their licences.
const LICENCES: &str = include_str!("../../../../assets/third-party/licences.txt");

/// What is read on the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Part {
    #[default]
    Licence,
    Packages,
    Licences,
}

impl Part {
    const ALL: [Self; 3] = [Self::Licence, Self::Packages, Self::Licences];

    fn name(self) -> &'static str {
        match self {
            Self::Licence => t!("app-licence-of-tankard"),
            Self::Packages => t!("app-what-it-is-built-from"),
            Self::Licences => t!("app-licences-of-these"),
        }
    }
}

/// A line of each text.
fn lines(part: Part) -> &'static [String] {
    static ALL: LazyLock<[Vec<String>; 3]> = LazyLock::new(|| {
        let plain = |text: &str| text.lines().map(str::to_owned).collect();
        // Those of other systems and of the tests alone are no part of the program. No cell holds a comma.
        let package = |line: &str| {
            let mut cells = line.split(',');
            let (name, version, licence, part) = (cells.next()?, cells.next()?, cells.next()?, cells.next()?);
            (part == "program").then(|| format!("{name} {version}: {licence}"))
        };
        [plain(LICENCE), PACKAGES.lines().filter_map(package).collect(), plain(LICENCES)]
    });
    let [licence, packages, licences] = &*ALL;
    match part {
        Part::Licence => licence,
        Part::Packages => packages,
        Part::Licences => licences,
    }
}

impl Desk {
    /// The page in the place of the view.
    pub(super) fn show_about(&mut self, ui: &mut Ui) {
        let Some(mut part) = self.about else { return };
        let mut is_open = !super::foot::escape(ui);
        let ground = Frame::new().fill(look::colours(ui).ground).inner_margin(Margin::symmetric(16, 8));
        CentralPanel::default().frame(ground).show(ui, |ui| {
            ui.horizontal(|ui| {
                ui.label(look::title(t!("app-tankard-version", version = env!("CARGO_PKG_VERSION"))));
                is_open &= !boxes::act(ui, t!("app-back-to-the-farm")).clicked();
            });
            ui.add(Label::new(t!("app-the-label-and-local-law-always")).wrap());
            ui.add_space(look::GRID);
            ui.horizontal_wrapped(|ui| {
                ui.spacing_mut().item_spacing.x = look::PAGES;
                for one in Part::ALL {
                    if look::page(ui, one.name(), part == one).clicked() {
                        part = one;
                    }
                }
            });
            ui.add_space(4.0);
            boxes::hairline(ui);
            let lines = lines(part);
            let height = ui.text_style_height(&TextStyle::Body);
            ScrollArea::both().id_salt(("about", part as u8)).auto_shrink(false).show_rows(
                ui,
                height,
                lines.len(),
                |ui, shown| {
                    for line in lines.iter().skip(shown.start).take(shown.len()) {
                        ui.add(Label::new(line).extend());
                    }
                },
            );
        });
        self.about = is_open.then_some(part);
    }
}
