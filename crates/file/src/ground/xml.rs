//! The elements of an XML file that matter, one after another, each with what stands in it.

use quick_xml::events::{BytesStart, Event};
use quick_xml::{Reader, XmlVersion};
use tankard_core::t;

use super::Why;
use super::limits::{DEPTH, FACTS, POINTS};
use crate::table::encoding;

/// An element with what stands in it; names without their namespaces.
#[derive(Debug, Default)]
pub(super) struct Node {
    pub(super) name: String,
    attributes: Vec<(String, String)>,
    /// Its own text.
    pub(super) text: String,
    pub(super) children: Vec<Node>,
}

impl Node {
    /// An attribute; empty where there is none.
    pub(super) fn attribute(&self, name: &str) -> &str {
        self.attributes.iter().find(|(known, _)| known == name).map_or("", |(_, value)| value.as_str())
    }

    /// The children of a name.
    pub(super) fn all<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a Node> {
        self.children.iter().filter(move |child| child.name == name)
    }

    /// The first child of a name.
    pub(super) fn one(&self, name: &str) -> Option<&Node> {
        self.children.iter().find(|child| child.name == name)
    }
}

/// The letters of an XML file: UTF-8, UTF-16 with its mark, or else code page 1252.
pub(super) fn letters(bytes: &[u8]) -> String {
    match bytes {
        [0xef, 0xbb, 0xbf, rest @ ..] => encoding::eight_bit(rest),
        [0xff, 0xfe, rest @ ..] => encoding::sixteen_bit(rest, u16::from_le_bytes),
        [0xfe, 0xff, rest @ ..] => encoding::sixteen_bit(rest, u16::from_be_bytes),
        _ => encoding::eight_bit(bytes),
    }
}

/// The name of the outermost element.
pub(super) fn root(text: &str) -> Option<String> {
    let mut reader = Reader::from_str(text);
    loop {
        match reader.read_event().ok()? {
            Event::Start(start) | Event::Empty(start) => return Some(local(&start)),
            Event::Eof => return None,
            _ => {}
        }
    }
}

/// Hands over each element of the wanted names, wherever it stands, but not those within another.
///
/// # Errors
/// The text is no XML, ends too early, stands too deep within itself, or brings entities of its own, which could swell it up.
pub(super) fn each(
    text: &str,
    wanted: &[&str],
    mut hand_over: impl FnMut(&Node) -> Result<(), Why>,
) -> Result<(), Why> {
    let mut reader = Reader::from_str(text);
    let mut depth = 0_usize;
    // The elements that are open within a wanted one, the wanted one first.
    let mut open: Vec<Node> = Vec::new();
    let mut nodes = 0_usize;
    let line = |at: u64| {
        let at = usize::try_from(at).unwrap_or(usize::MAX).min(text.len());
        text.as_bytes().iter().take(at).filter(|byte| **byte == b'\n').count() + 1
    };
    loop {
        let event = match reader.read_event() {
            Ok(event) => event,
            Err(error) => {
                return Err(Why::Piece(t!("file-line", line = line(reader.error_position()), error = error)));
            }
        };
        match event {
            Event::Start(start) | Event::Empty(start) if nodes > 2 * POINTS => {
                return Err(Why::Piece(t!("file-has-more-in-it-than-is", start = local(&start))));
            }
            Event::Start(start) => {
                depth += 1;
                if depth > DEPTH {
                    let why = t!(
                        "file-line-more-than-elements-within-one",
                        line = line(reader.buffer_position()),
                        depth = DEPTH
                    );
                    return Err(Why::Piece(why));
                }
                if !open.is_empty() || wanted.contains(&local(&start).as_str()) {
                    nodes += 1;
                    open.push(node(&start)?);
                }
            }
            Event::Empty(start) => {
                let one =
                    (!open.is_empty() || wanted.contains(&local(&start).as_str())).then(|| node(&start)).transpose()?;
                nodes += 1;
                match (one, open.last_mut()) {
                    (Some(node), Some(parent)) => parent.children.push(node),
                    (Some(node), None) => hand_over(&node)?,
                    (None, _) => {}
                }
            }
            Event::End(_) => {
                depth = depth.saturating_sub(1);
                if let Some(done) = open.pop() {
                    if let Some(parent) = open.last_mut() {
                        parent.children.push(done);
                    } else {
                        hand_over(&done)?;
                        nodes = 0;
                    }
                }
            }
            Event::Text(text) => add(&mut open, &text.xml10_content()),
            Event::CData(text) => add(&mut open, &text.xml10_content()),
            Event::GeneralRef(reference) => {
                let letter = match &*reference {
                    "amp" => Some('&'),
                    "lt" => Some('<'),
                    "gt" => Some('>'),
                    "quot" => Some('"'),
                    "apos" => Some('\''),
                    _ => reference.resolve_char_ref().ok().flatten(),
                };
                let Some(letter) = letter else {
                    let why =
                        t!("file-line-is-not-known", line = line(reader.buffer_position()), reference = &*reference);
                    return Err(Why::Piece(why));
                };
                add(&mut open, letter.encode_utf8(&mut [0; 4]));
            }
            Event::DocType(declared) if declared.contains('[') => {
                let why = t!("file-it-brings-entities-of-its-own").to_owned();
                return Err(Why::Piece(why));
            }
            Event::Comment(_) | Event::Decl(_) | Event::PI(_) | Event::DocType(_) => {}
            Event::Eof if depth > 0 => return Err(Why::Piece(t!("file-it-ends-in-the-middle").to_owned())),
            Event::Eof => return Ok(()),
        }
    }
}

fn add(open: &mut [Node], text: &str) {
    if let Some(node) = open.last_mut() {
        node.text.push_str(text);
    }
}

fn local(start: &BytesStart<'_>) -> String {
    start.local_name().as_ref().to_owned()
}

fn node(start: &BytesStart<'_>) -> Result<Node, Why> {
    let mut node = Node { name: local(start), ..Node::default() };
    // The parser would hold each name against all before it; one that stands twice counts as it stands first.
    for attribute in start.attributes().with_checks(false) {
        if node.attributes.len() >= FACTS {
            return Err(Why::Piece(t!("file-has-more-than-attributes", name = node.name, facts = FACTS)));
        }
        let attribute =
            attribute.map_err(|error| Why::Piece(t!("file-in-element", name = node.name, error = error)))?;
        let value = attribute
            .normalized_value(XmlVersion::Implicit1_0)
            .map_err(|error| Why::Piece(t!("file-in-element", name = node.name, error = error)))?;
        node.attributes.push((attribute.key.local_name().as_ref().to_owned(), value.into_owned()));
    }
    Ok(node)
}
