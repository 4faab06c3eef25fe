//! A sheet as one text, to be kept on the device, and back.

use super::Sheet;
use crate::share::{LinkWriter, pairs};

impl Sheet {
    /// All of it as one text.
    #[must_use]
    pub fn pack(&self) -> String {
        let mut out = LinkWriter::default();
        for (name, text) in &self.entries {
            out.pair(name, text);
        }
        out.0
    }

    /// The sheet that was packed.
    #[must_use]
    pub fn unpack(text: &str) -> Self {
        let mut sheet = Self::default();
        for (name, text) in pairs(text) {
            sheet.push(name, text);
        }
        for list in ["stems", "targets"] {
            if sheet.count(list) == 0 {
                sheet.add(list);
            }
        }
        sheet
    }
}
