//! A text with the name of its file, so that what is wrong in it is told by file and line.

/// A file's text.
pub(crate) struct Lines<'a> {
    /// The file, as people are told of it.
    file: &'a str,
    pub(crate) text: &'a str,
}

impl<'a> Lines<'a> {
    pub(crate) fn of(file: &'a str, text: &'a str) -> Self {
        Self { file, text }
    }

    /// What is wrong at a byte of the text.
    pub(crate) fn problem(&self, at: usize, what: impl std::fmt::Display) -> anyhow::Error {
        let line = 1 + self.text[..at.min(self.text.len())].matches('\n').count();
        anyhow::anyhow!("{}:{line}: {what}", self.file)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_byte_is_told_by_its_line() {
        let lines = Lines::of("a.md", "one\ntwo\n");
        for (at, line) in [(0, 1), (3, 1), (4, 2), (99, 3)] {
            let said = lines.problem(at, "x").to_string();
            assert_eq!(said, format!("a.md:{line}: x"));
        }
    }
}
