//! The text of a file, however its letters were saved.

use super::TableError;

/// Windows code page 1252 from 0x80 to 0x9f, where it differs from Latin-1. Source: the mapping of the Unicode Consortium.
const CP1252: [char; 32] = [
    '€', '\u{fffd}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{fffd}', 'Ž', '\u{fffd}', '\u{fffd}',
    '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{fffd}', 'ž', 'Ÿ',
];

/// How much of a file is looked at to see what it is.
const HEAD: usize = 4096;

/// UTF-8, UTF-16 of either order, or else code page 1252; each line ended by a line feed alone.
pub(super) fn text(bytes: &[u8]) -> Result<String, TableError> {
    let text = match bytes {
        [] => return Err(TableError::Empty),
        [b'P', b'K', 3, 4, ..] | [0xd0, 0xcf, 0x11, 0xe0, ..] => return Err(TableError::Workbook),
        [0xef, 0xbb, 0xbf, rest @ ..] => eight_bit(rest),
        [0xff, 0xfe, rest @ ..] => sixteen_bit(rest, u16::from_le_bytes),
        [0xfe, 0xff, rest @ ..] => sixteen_bit(rest, u16::from_be_bytes),
        // Without a mark: a letter of the Latin alphabet has one byte that is nothing.
        [0, second, ..] if *second != 0 => sixteen_bit(bytes, u16::from_be_bytes),
        [first, 0, ..] if *first != 0 => sixteen_bit(bytes, u16::from_le_bytes),
        _ => eight_bit(bytes),
    };
    let odd = |letter: &char| (letter.is_control() && !matches!(letter, '\n' | '\r' | '\t')) || *letter == '\u{fffd}';
    let (seen, strange) =
        text.chars().take(HEAD).fold((0, 0), |(seen, strange), letter| (seen + 1, strange + usize::from(odd(&letter))));
    if strange * 20 > seen {
        return Err(TableError::NotText);
    }
    Ok(if text.contains('\r') { text.replace("\r\n", "\n").replace('\r', "\n") } else { text })
}

/// UTF-8, or else code page 1252.
pub(crate) fn eight_bit(bytes: &[u8]) -> String {
    std::str::from_utf8(bytes).map_or_else(|_| cp1252(bytes), str::to_owned)
}

/// Windows code page 1252.
pub(crate) fn cp1252(bytes: &[u8]) -> String {
    let letter = |byte: &u8| match byte {
        0x80..=0x9f => CP1252.get(usize::from(byte - 0x80)).copied().unwrap_or('\u{fffd}'),
        _ => char::from(*byte),
    };
    bytes.iter().map(letter).collect()
}

/// UTF-16 by the order of its bytes.
pub(crate) fn sixteen_bit(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> String {
    let units = bytes.chunks_exact(2).filter_map(|pair| pair.try_into().ok()).map(unit);
    char::decode_utf16(units).map(|letter| letter.unwrap_or('\u{fffd}')).collect()
}
