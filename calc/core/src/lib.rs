//! What follows from what is known: pure functions and types, no clock, no files, no web, no wording. Six layers, each
//! naming only those in front of it:
//!
//! - [`terms`]: plain data and its words: quantities, tree, species, methods, sources. No rule.
//! - [`timing`]: when the bark slips at a place, and the months that law and biology close.
//! - [`models`]: a file for each part of the answer: a tree and a table in, a value with its reasons out.
//! - [`mod@reference`]: all tables together, passed in; `calc-data` holds the ones that are compiled in.
//! - [`question`]: from what was typed to what was meant, or every problem at once; a group's settings likewise.
//! - [`answer`]: asks the models in order, reach first, and puts together what they say.
//!
//! One question, asked. Its problems come all at once; given a question that was read, the answer cannot fail:
//!
//! ```
//! use calc::{answer::answer, models::season::Local, question::read};
//! let reference = calc_data::whole();
//! let question = read(reference, &examples::named("do")).expect("a good question");
//! let answer = answer(reference, &question, &Local::default());
//! assert_eq!(answer.outcome.word(), "do");
//! ```

pub mod answer;
pub mod models;
pub mod question;
pub mod reference;
pub mod terms;
pub mod timing;
