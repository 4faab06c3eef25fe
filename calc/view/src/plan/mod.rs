//! The season of a list, the same for the page and the command line.
//!
//! ```text
//! asked::Asked::of(typed)               what is asked for: days, crew, limits
//! land::land(typed, units)               land of its parts, and a floor of canopy
//! said::Said                            what was said once for a unit or a species
//! read::ListFile::of(bytes, decisions)  a file, and its rows as they are cut
//! read::ReadList                        the list row by row, then its trees judged, in slices where somebody waits
//! after::AfterWork::of(list, asked, file) what was found at visits: its trees move on
//! after_sentences                        what was found, told
//! made::Made::of(list, asked)           its plan, and what limits it
//! how_good::walking(made)               how far its walks and their charge lie apart
//! made::Made::files(list, asked)         the names of its files
//! made::Made::file(name)                one of the files of a plan
//! paper::Sheets                         cover, crew sheets, tags
//! replant::replanting(list, made, asked) what may stand where trees die
//! leftover                              rows before, given back a piece at a time
//! screen                                what the page shows of it
//! ```

pub mod after;
pub mod after_sentences;
pub mod asked;
pub mod earlier;
mod geojson;
pub mod how_good;
pub mod land;
pub mod leftover;
pub mod made;
pub mod making;
pub mod paper;
mod pieces;
pub mod place;
pub mod read;
pub mod replant;
pub mod said;
pub mod screen;
mod standing;
mod tables;
