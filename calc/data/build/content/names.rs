//! The names that find a species, made from the cells that hold them.

/// The names in a cell: parts between slashes; `Sweet (black) birch` is sweet birch and black birch. A single word
/// before a bracket at the end is a genus, and no name of one species.
pub(crate) fn spellings(cell: &str) -> Vec<String> {
    let Some((before, rest)) = cell.split_once('(') else {
        return cell.split('/').map(|part| part.trim().to_owned()).collect();
    };
    let (inside, after) = rest.split_once(')').unwrap_or((rest, ""));
    let (before, after) = (before.trim(), after.trim());
    if after.is_empty() {
        let species = before.contains(' ');
        return species.then(|| before.to_owned()).into_iter().collect();
    }
    vec![format!("{before} {after}"), format!("{inside} {after}")]
}

/// The first of them; of a single word before a bracket that word, where the cell is known to name one species.
pub(crate) fn first_spelling(cell: &str) -> String {
    let before = cell.split(" (").next().unwrap_or(cell);
    let first = spellings(cell).into_iter().next();
    first.unwrap_or_else(|| before.to_owned())
}

/// First letter in capitals; the rest as written.
pub(crate) fn title(name: &str) -> String {
    let name = name.trim();
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// Names in order, each once whatever its capitals.
#[derive(Default)]
pub(crate) struct Collected(Vec<String>);

impl Collected {
    /// Adds a name that is not there yet.
    pub(crate) fn add(&mut self, name: &str) {
        let name = name.trim();
        if !name.is_empty() && !self.0.iter().any(|known| known.eq_ignore_ascii_case(name)) {
            self.0.push(name.to_owned());
        }
    }

    /// All of them, the one that is shown first.
    pub(crate) fn all(self) -> Vec<String> {
        self.0
    }
}
