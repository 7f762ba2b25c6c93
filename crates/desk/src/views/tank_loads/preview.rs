//! The picture of a card, laid out on a thread of its own.

use std::sync::mpsc::{Receiver, channel};

use egui::{ColorImage, TextureHandle, TextureOptions, Ui, Vec2};
use tankard_core::farm::card::CardContent;
use tankard_core::language::as_here;
use tankard_core::t;
use tankard_paper::{PaperError, Picture, Sheet};

/// What a card is shown as.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Wanted {
    /// Its number, or the word for a draft.
    pub number: String,
    /// When it was issued.
    pub issued: Option<String>,
    /// What it holds.
    pub content: CardContent,
}

#[derive(Default)]
pub(crate) struct Preview {
    shown: Option<(Wanted, Result<TextureHandle, String>)>,
    coming: Option<(Wanted, Receiver<Result<Picture, PaperError>>)>,
}

impl Preview {
    /// Shows the picture of a card in the room there is, or what keeps it.
    pub(crate) fn show(&mut self, ui: &mut Ui, wanted: &Wanted, room: Vec2) {
        self.take(ui);
        let known = self.shown.as_ref().is_some_and(|(shown, _)| shown == wanted);
        if !known && self.coming.is_none() {
            self.begin(ui, wanted.clone());
        }
        match &self.shown {
            Some((_, Ok(texture))) => {
                let size = texture.size_vec2();
                let scale = (room.x / size.x).min(room.y / size.y);
                let image = egui::Image::new(texture)
                    .fit_to_exact_size(size * scale)
                    .alt_text(t!("tank-loads-load-card", number = wanted.number));
                ui.add(image);
            }
            Some((_, Err(problem))) => {
                ui.label(t!("tank-loads-the-card-cannot-be-laid-out", problem = problem));
            }
            None => {
                ui.label(crate::look::soft(ui, t!("tank-loads-laying-out-the-card")));
            }
        }
    }

    fn begin(&mut self, ui: &Ui, wanted: Wanted) {
        let (sender, receiver) = channel();
        let (card, ctx) = (wanted.clone(), ui.ctx().clone());
        // Twice the points of the page, so that it stays sharp where the desk is scaled up.
        std::thread::spawn(as_here(move || {
            let sheet =
                Sheet { number: &card.number, issued: card.issued.clone(), reprint: None, content: &card.content };
            // The desk may be closed meanwhile; then nobody waits for the picture.
            let _ = sender.send(tankard_paper::picture(&sheet, 2.0));
            ctx.request_repaint();
        }));
        self.coming = Some((wanted, receiver));
    }

    fn take(&mut self, ui: &Ui) {
        let Some((wanted, receiver)) = self.coming.take() else { return };
        match receiver.try_recv() {
            Ok(made) => {
                let made = made.map_err(|error| error.to_string()).and_then(|picture| texture(ui, &picture));
                self.shown = Some((wanted, made));
            }
            Err(std::sync::mpsc::TryRecvError::Empty) => self.coming = Some((wanted, receiver)),
            Err(std::sync::mpsc::TryRecvError::Disconnected) => {
                self.shown = Some((wanted, Err(t!("tank-loads-the-layout-stopped").to_owned())));
            }
        }
    }
}

fn texture(ui: &Ui, picture: &Picture) -> Result<TextureHandle, String> {
    let size = [picture.width, picture.height].map(|side| usize::try_from(side).unwrap_or(0));
    if picture.rgba.len() != size[0] * size[1] * 4 {
        return Err(t!("tank-loads-the-picture-has-the-wrong-size").to_owned());
    }
    let image = ColorImage::from_rgba_unmultiplied(size, &picture.rgba);
    Ok(ui.ctx().load_texture("load card", image, TextureOptions::LINEAR))
}
