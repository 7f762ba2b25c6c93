//! The picture under the map: read from its file on a thread of its own, and made no larger than the screen's card can hold.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use tankard_core::language::as_here;
use tankard_core::t;

use egui::{Color32, ColorImage, Context, Painter, Pos2, Rect, TextureHandle, TextureOptions};
use geo::Coord;
use tankard_core::farm::Background;
use tankard_file::names;

use super::camera::Screen;
use super::land::Land;

/// The longest side that is shown; a larger picture is made smaller.
const LONGEST: u32 = 4096;
/// The most that is read into memory for it, in bytes.
const MOST: u64 = 1 << 30;

enum Held {
    Reading(Receiver<Result<Read, String>>),
    Shown(TextureHandle),
    Problem(String),
}

struct Read {
    image: ColorImage,
}

/// The picture.
pub(super) struct Picture {
    /// With the path as the farm has it, and the farm's folder.
    held: Option<((String, Option<PathBuf>), Held)>,
    /// From 0, not to be seen, to 1.
    pub(super) strength: f32,
}

impl Default for Picture {
    fn default() -> Self {
        Self { held: None, strength: 0.7 }
    }
}

/// The path under which a file is kept: from the folder of the farm where it lies in that.
pub(super) fn kept_as(file: &Path, farm: Option<&PathBuf>) -> String {
    let folder = farm.and_then(|farm| farm.parent());
    let within = folder.and_then(|folder| file.strip_prefix(folder).ok());
    within.unwrap_or(file).display().to_string()
}

impl Picture {
    /// Reads the file anew.
    pub(super) fn forget(&mut self) {
        self.held = None;
    }

    /// What went wrong.
    pub(super) fn problem(&self) -> Option<&str> {
        match &self.held {
            Some((_, Held::Problem(problem))) => Some(problem),
            _ => None,
        }
    }

    /// Draws it between its corners.
    pub(super) fn show(
        &mut self,
        background: &Background,
        farm: Option<&PathBuf>,
        painter: &Painter,
        (screen, land): (&Screen, &Land),
    ) {
        let folder = farm.and_then(|farm| farm.parent());
        let is_known = |(file, of): &(String, Option<PathBuf>)| *file == background.file && of.as_deref() == folder;
        if self.held.as_ref().is_none_or(|(known, _)| !is_known(known)) {
            let held = match names::picture(folder, &background.file) {
                Ok(path) => Held::Reading(read_aside(&path, painter.ctx())),
                Err(why) => Held::Problem(t!("fields-the-picture-is-not-shown", why = why, file = background.file)),
            };
            self.held = Some(((background.file.clone(), folder.map(Path::to_owned)), held));
        }
        let Some((_, held)) = &mut self.held else { return };
        if let Held::Reading(receiver) = held {
            match receiver.try_recv() {
                Ok(Ok(read)) => {
                    let texture = painter.ctx().load_texture("picture of the map", read.image, TextureOptions::LINEAR);
                    *held = Held::Shown(texture);
                }
                Ok(Err(problem)) => *held = Held::Problem(problem),
                Err(TryRecvError::Empty) => {}
                Err(TryRecvError::Disconnected) => {
                    *held = Held::Problem(t!("fields-the-picture-could-not-be-read").to_owned());
                }
            }
        }
        if let Held::Shown(texture) = held {
            let corner = |at: Coord<f64>| screen.place_of(land.flat.to_plane(at));
            let rect = Rect::from_two_pos(
                corner(background.north_west.bounds().min()),
                corner(background.south_east.bounds().min()),
            );
            let whole = Rect::from_min_max(Pos2::ZERO, Pos2::new(1.0, 1.0));
            painter.image(texture.id(), rect, whole, Color32::WHITE.gamma_multiply(self.strength));
        }
    }
}

fn read_aside(path: &Path, ctx: &Context) -> Receiver<Result<Read, String>> {
    let (sender, receiver) = channel();
    let longest = LONGEST.min(u32::try_from(ctx.input(|input| input.max_texture_side)).unwrap_or(LONGEST));
    let (path, ctx) = (path.to_owned(), ctx.clone());
    std::thread::spawn(as_here(move || {
        // Nobody waits for it any more where the farm was closed.
        let _ = sender.send(read(&path, longest));
        ctx.request_repaint();
    }));
    receiver
}

fn read(path: &Path, longest: u32) -> Result<Read, String> {
    let shown = path.display();
    if !path.is_file() {
        return Err(t!("fields-the-picture-is-not-there-put", shown = shown));
    }
    let unread = |error: &dyn std::fmt::Display| {
        t!("fields-the-picture-could-not-be-read-error-shown", error = error, shown = shown)
    };
    let mut reader = image::ImageReader::open(path)
        .and_then(image::ImageReader::with_guessed_format)
        .map_err(|error| unread(&error))?;
    let mut limits = image::Limits::default();
    limits.max_alloc = Some(MOST);
    reader.limits(limits);
    let mut picture = reader.decode().map_err(|error| match error {
        image::ImageError::Limits(_) => t!("fields-the-picture-is-too-large-save", shown = shown),
        image::ImageError::Unsupported(_) => t!("fields-the-picture-is-neither-png-nor", shown = shown),
        other => unread(&other),
    })?;
    if picture.width().max(picture.height()) > longest {
        picture = picture.thumbnail(longest, longest);
    }
    let picture = picture.into_rgba8();
    let size = [picture.width(), picture.height()].map(|side| side as usize);
    Ok(Read { image: ColorImage::from_rgba_unmultiplied(size, picture.as_raw()) })
}

#[cfg(test)]
mod tests {
    use std::path::{Path, PathBuf};

    use super::{kept_as, read};

    #[test]
    fn a_large_picture_is_made_smaller_and_a_missing_one_is_said() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("air.png");
        image::RgbImage::new(600, 300).save(&path).unwrap();
        assert_eq!(read(&path, 4096).unwrap().image.size, [600, 300]);
        assert_eq!(read(&path, 200).unwrap().image.size, [200, 100]);
        let missing = read(&folder.path().join("gone.png"), 200).err().unwrap();
        assert!(missing.starts_with("The picture is not there"), "{missing}");
        std::fs::write(&path, "no picture").unwrap();
        assert!(read(&path, 200).is_err());
    }

    #[test]
    fn a_path_is_kept_from_the_folder_of_the_farm() {
        let farm = PathBuf::from("/farms/larkspur.ron");
        assert_eq!(kept_as(Path::new("/farms/pictures/air.png"), Some(&farm)), "pictures/air.png");
        assert_eq!(kept_as(Path::new("/elsewhere/air.png"), Some(&farm)), "/elsewhere/air.png");
        assert_eq!(kept_as(Path::new("/farms/air.png"), None), "/farms/air.png");
    }
}
