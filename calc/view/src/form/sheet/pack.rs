//! A sheet as one text, to be kept on the device, and back.

use super::{NOTHING, Sheet};
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

    /// Says what older drafts say in controls that are gone: the day in three parts, and that nothing is in reach.
    fn renew(&mut self) {
        if self.is("day", "other") {
            let [y, m, d] =
                [".y", ".m", ".d"].map(|key| self.trimmed(&cat!("date", key)).to_owned());
            self.set("day", &[y, m, d].join("-"));
        }
        if self.ticked("none_in_reach") && self.is("targets[0].kind", "") {
            self.set("targets[0].kind", NOTHING);
            self.set("none_in_reach", "");
        }
    }

    /// The sheet that was packed.
    #[must_use]
    pub fn unpack(text: &str) -> Self {
        let mut sheet = Self::default();
        for (name, text) in pairs(text) {
            sheet.push(name, text);
        }
        sheet.renew();
        for list in ["stems", "targets"] {
            if sheet.count(list) == 0 {
                sheet.add(list);
            }
        }
        sheet
    }
}
