//! Where a list comes from: a file, which is read twice, first to judge it and then row by row; or standard input, whose
//! first rows decide.

use anyhow::{Context, Result};
use calc_list::bytes::{changed_words, from_utf16};
use calc_list::reader::Cut;
use calc_list::{Decisions, Encoding, Look, NotList, Record, Records};
use calc_view::words::m;
use std::fs::File;
use std::io::{BufRead, BufReader, Cursor, Read, Seek as _, SeekFrom};

/// So many rows of a file are judged.
const FILE_ROWS: usize = 50_000;
/// So many of standard input: no row is printed before they are read.
const INPUT_ROWS: usize = 2_000;
/// So many bytes are looked at for what stands between cells.
const HEAD: usize = 1 << 20;
/// So many bytes are read at once.
const SLICE: usize = 1 << 16;

enum From {
    /// A file, from its beginning again.
    File(File),
    /// All of it: an encoding that is turned round as a whole.
    Memory(Vec<u8>),
    /// What was read of standard input, and the rest of it.
    Input(Vec<u8>, Box<dyn Read>),
}

/// A list whose encoding is known.
pub(super) struct Source {
    from: From,
    cut: Cut,
    most: usize,
    changed: Vec<String>,
}

impl Source {
    /// Opens a file, or standard input for `-`.
    ///
    /// # Errors
    /// When it can't be read; inside, why it is no list.
    pub(super) fn open(name: &str, decisions: &Decisions) -> Result<Result<Self, NotList>> {
        if name == "-" {
            return Self::input(Box::new(std::io::stdin()), decisions);
        }
        let unread = || m::list_unreadable(name);
        let mut file = File::open(name).with_context(unread)?;
        if !file.metadata().with_context(unread)?.is_file() {
            // What can't be read twice, such as a pipe with a name.
            return Self::input(Box::new(file), decisions);
        }
        let (mut look, mut head, mut slice) = (Look::default(), Vec::new(), vec![0; SLICE]);
        loop {
            let read = file.read(&mut slice).with_context(unread)?;
            if read == 0 {
                break;
            }
            look.take(&slice[..read]);
            if head.len() < HEAD {
                head.extend_from_slice(&slice[..read]);
            }
        }
        let encoding = match look.done() {
            Ok(encoding) => encoding,
            Err(why) => return Ok(Err(why)),
        };
        file.seek(SeekFrom::Start(0)).with_context(unread)?;
        if matches!(encoding, Encoding::Utf16Le | Encoding::Utf16Be) {
            let mut bytes = Vec::new();
            file.read_to_end(&mut bytes).with_context(unread)?;
            return Ok(Self::turned(&bytes, encoding, decisions));
        }
        Ok(Cut::of(&head, encoding, decisions).map(|cut| Self {
            from: From::File(file),
            cut,
            most: FILE_ROWS,
            changed: changed(encoding, &head),
        }))
    }

    fn turned(bytes: &[u8], encoding: Encoding, decisions: &Decisions) -> Result<Self, NotList> {
        let bytes = from_utf16(bytes, encoding).into_bytes();
        Ok(Self {
            cut: Cut::of(&bytes, Encoding::Utf8, decisions)?,
            from: From::Memory(bytes),
            most: FILE_ROWS,
            changed: Vec::new(),
        })
    }

    /// Reads as much of what can be read once as decides; a piece of a file decides nothing, and so waits for nothing.
    fn input(mut from: Box<dyn Read>, decisions: &Decisions) -> Result<Result<Self, NotList>> {
        let unread = || m::COMMAND_UNREADABLE_INPUT.text();
        let (mut look, mut head, mut slice) = (Look::default(), Vec::new(), vec![0; SLICE]);
        let most = if decisions.of_a_piece() { 1 } else { HEAD };
        let mut ended = false;
        while head.len() < most {
            let read = from.read(&mut slice).with_context(unread)?;
            ended = read == 0;
            if ended {
                break;
            }
            look.take(&slice[..read]);
            head.extend_from_slice(&slice[..read]);
        }
        // A letter that the last slice cut is none that is broken.
        let whole = || std::str::from_utf8(&head).is_err_and(|error| error.error_len().is_some());
        let encoding = match look.done() {
            Ok(Encoding::Windows1252) if !ended && !whole() => Encoding::Utf8,
            Ok(encoding) => encoding,
            Err(why) => return Ok(Err(why)),
        };
        if matches!(encoding, Encoding::Utf16Le | Encoding::Utf16Be) {
            from.read_to_end(&mut head).with_context(unread)?;
            return Ok(Self::turned(&head, encoding, decisions));
        }
        Ok(Cut::of(&head, encoding, decisions).map(|cut| Self {
            cut,
            most: INPUT_ROWS,
            changed: changed(encoding, &head),
            from: From::Input(head, from),
        }))
    }

    /// The rows that are judged, title lines and header with them.
    ///
    /// # Errors
    /// When it can't be read.
    pub(super) fn first_rows(&mut self, first_row: u64) -> Result<Vec<Record>> {
        let cut = self.cut;
        let unread = || m::LIST_CUT_SHORT.text();
        let rows = |bytes: &mut dyn BufRead, most: usize| -> std::io::Result<Vec<Record>> {
            let mut records = cut.records(bytes, first_row)?;
            let (mut all, mut record) = (Vec::new(), Record::default());
            while all.len() < most && records.next(&mut record)?.0 {
                all.push(record.clone());
            }
            Ok(all)
        };
        match &mut self.from {
            From::File(file) => {
                let rows = rows(&mut BufReader::with_capacity(SLICE, &*file), self.most)
                    .with_context(unread)?;
                file.seek(SeekFrom::Start(0)).with_context(unread)?;
                Ok(rows)
            }
            From::Memory(bytes) => rows(&mut bytes.as_slice(), self.most).with_context(unread),
            From::Input(bytes, _) => {
                let mut all = rows(&mut bytes.as_slice(), self.most).with_context(unread)?;
                // The last row of what was read may have been cut.
                if all.len() > 1 && all.len() < self.most {
                    all.pop_if(|record| record.unclosed);
                }
                Ok(all)
            }
        }
    }

    /// All rows, from the first.
    ///
    /// # Errors
    /// When it can't be read.
    pub(super) fn records(&mut self, first_row: u64) -> Result<Records<Box<dyn BufRead>>> {
        let from = std::mem::replace(&mut self.from, From::Memory(Vec::new()));
        let bytes: Box<dyn BufRead> = match from {
            From::File(file) => Box::new(BufReader::with_capacity(SLICE, file)),
            From::Memory(bytes) => Box::new(Cursor::new(bytes)),
            From::Input(head, rest) => Box::new(BufReader::with_capacity(
                SLICE,
                Cursor::new(head).chain(rest),
            )),
        };
        let records = self.cut.records(bytes, first_row);
        records.context(m::LIST_CUT_SHORT.text())
    }

    /// Some words of an older encoding, as they were read.
    pub(super) fn changed_words(&self) -> &[String] {
        &self.changed
    }
}

fn changed(encoding: Encoding, head: &[u8]) -> Vec<String> {
    match encoding {
        Encoding::Windows1252 => changed_words(head),
        _ => Vec::new(),
    }
}
