//! What was being done to a file when the disk said no.

use std::io::{Error, ErrorKind};
use std::path::Path;

use tankard_core::t;

/// What was being done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// A file was opened.
    Opening,
    /// A file was read.
    Reading,
    /// The file that a report would replace was looked at.
    Looking,
    /// A file was written.
    Writing,
    /// A link where our own file belongs was taken away.
    RemovingLink,
    /// The file behind a link was looked for.
    FollowingLink,
    /// A new file was made beside the old one.
    MakingFile,
    /// The new file was put in the place of the old one.
    PuttingInPlace,
    /// The new file was given the rights of the old one.
    SettingRights,
    /// What was written was flushed to the disk.
    Flushing,
    /// A whole copy was made elsewhere.
    MakingCopy,
    /// The folder for backups was made.
    MakingBackupFolder,
    /// A backup was kept.
    KeepingBackup,
    /// The folder for unsaved work was made.
    MakingSideFolder,
    /// The lock was written.
    WritingLock,
    /// The lock was refreshed.
    RefreshingLock,
}

impl Doing {
    /// In words: what failed.
    fn words(self) -> &'static str {
        match self {
            Self::Opening => t!("file-opening"),
            Self::Reading => t!("file-reading"),
            Self::Looking => t!("file-looking-at-the-file-there"),
            Self::Writing => t!("file-writing"),
            Self::RemovingLink => t!("file-removing-a-link"),
            Self::FollowingLink => t!("file-following-the-link"),
            Self::MakingFile => t!("file-making-a-new-file"),
            Self::PuttingInPlace => t!("file-putting-the-new-file-in-place"),
            Self::SettingRights => t!("file-setting-the-rights"),
            Self::Flushing => t!("file-flushing-to-disk"),
            Self::MakingCopy => t!("file-making-a-copy"),
            Self::MakingBackupFolder => t!("file-making-a-folder-for-backups"),
            Self::KeepingBackup => t!("file-keeping-a-backup"),
            Self::MakingSideFolder => t!("file-making-a-folder-for-unsaved-work"),
            Self::WritingLock => t!("file-writing-the-lock"),
            Self::RefreshingLock => t!("file-refreshing-the-lock"),
        }
    }

    /// That it failed, why and where, and what a person can do about it, where that is known.
    pub(crate) fn failed(self, source: &Error, path: &Path) -> String {
        let (doing, path) = (self.words(), path.display());
        match source.kind() {
            _ if matches!(self, Self::Opening | Self::Reading) => {
                t!("file-failed", doing = doing, source = source, path = path)
            }
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => {
                t!("file-failed-no-room", doing = doing, source = source, path = path)
            }
            ErrorKind::ReadOnlyFilesystem | ErrorKind::PermissionDenied => {
                t!("file-failed-may-not", doing = doing, source = source, path = path)
            }
            ErrorKind::NotFound => t!("file-failed-no-folder", doing = doing, source = source, path = path),
            _ => t!("file-failed-try-again", doing = doing, source = source, path = path),
        }
    }
}
