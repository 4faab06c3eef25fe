//! Answers for many rows: each different question is answered once, each place's climate is looked up once.

use calc::answer::{Answer, without_sources};
use calc::models::season::Local;
use calc::question::settings::AskingGroup;
use calc::question::{Keyed, Question, Slot, Typed};
use calc::reference::Reference;
use calc::timing::places::climate::Places;
use std::collections::BTreeMap;
use std::rc::Rc;

/// So many different questions are remembered; further ones are answered each time.
const MOST_KEPT: usize = 200_000;
/// So many places are remembered.
const MOST_PLACES: usize = 10_000;

/// Answers questions, and keeps of each answer what the caller makes of it: an [`Answer`] is twelve kilobytes, too much
/// to keep one a row.
///
/// ```
/// use calc_list::{Answers, Decisions, Is, ListContext, read_whole};
/// let options = ListContext { today: "2027-05-01".into(), ..ListContext::default() };
/// let file = "Tag,Species,DBH (in)\n17,Norway maple,14\n18,Norway maple,14\n";
/// let list = read_whole(calc_data::whole(), file.as_bytes(), &options, &Decisions::default());
/// let list = list.expect("a list");
/// let mut answers = Answers::new(calc_data::whole(), calc_data::places::places(), None);
/// let mut outcome = |row: &calc_list::Row| match &row.is {
///     Is::Tree(typed, question) => {
///         *answers.of(typed, question, |_, _, answer| answer.outcome.word())
///     }
///     _ => "to fix",
/// };
/// assert_eq!(list.rows.iter().map(&mut outcome).collect::<Vec<_>>(), ["cannot_tell"; 2]);
/// assert_eq!(answers.asked(), 1);
/// ```
pub struct Answers<T> {
    reference: &'static Reference,
    places: &'static Places,
    group: Option<AskingGroup>,
    kept: BTreeMap<Vec<u8>, Rc<T>>,
    locals: BTreeMap<Vec<u8>, Rc<Local>>,
    asked: u64,
}

impl<T> Answers<T> {
    /// With the climate places, empty where the table is not at hand, and a group's own settings.
    #[must_use]
    pub fn new(
        reference: &'static Reference,
        places: &'static Places,
        group: Option<AskingGroup>,
    ) -> Self {
        Self {
            reference,
            places,
            group,
            kept: BTreeMap::new(),
            locals: BTreeMap::new(),
            asked: 0,
        }
    }

    /// What `make` makes of the answer to a row's question: a tree of a list is answered without its sources and without
    /// the search for what would change its answer. `make` gets the question as the group's settings leave it.
    pub fn of(
        &mut self,
        typed: &Typed,
        question: &Question,
        make: impl FnOnce(&Question, &Local, &Answer) -> T,
    ) -> Rc<T> {
        let reference = self.reference;
        self.each(typed, question, |question, local| {
            make(
                question,
                local,
                &without_sources(reference, question, local),
            )
        })
    }

    /// The same for what asks by itself: `make` gets the question as the group's settings leave it, and no answer.
    pub fn each(
        &mut self,
        typed: &Typed,
        question: &Question,
        make: impl FnOnce(&Question, &Local) -> T,
    ) -> Rc<T> {
        let mut key = Vec::with_capacity(160);
        write(&mut typed.clone(), &mut key);
        if let Some(known) = self.kept.get(&key) {
            return Rc::clone(known);
        }
        let local = self.local(typed, question);
        let own;
        let question = match &self.group {
            Some(group) => {
                let mut asked = question.clone();
                group.settings.apply(&mut asked);
                own = asked;
                &own
            }
            None => question,
        };
        self.asked += 1;
        let made = Rc::new(make(question, &local));
        if self.kept.len() < MOST_KEPT {
            self.kept.insert(key, Rc::clone(&made));
        }
        made
    }

    /// The climate of a question's place.
    pub fn local(&mut self, typed: &Typed, question: &Question) -> Rc<Local> {
        let mut key = Vec::new();
        if let Some(mut place) = typed.place.clone() {
            write(&mut place, &mut key);
        }
        key.extend(question.region.as_deref().unwrap_or("").bytes());
        if let Some(known) = self.locals.get(&key) {
            return Rc::clone(known);
        }
        let local = Rc::new(Local::of(
            &self.reference.constants.timing,
            &question.place,
            question.region.as_deref(),
            self.places,
        ));
        if self.locals.len() < MOST_PLACES {
            self.locals.insert(key, Rc::clone(&local));
        }
        local
    }

    /// How many different questions were answered.
    #[must_use]
    pub fn asked(&self) -> u64 {
        self.asked
    }
}

/// Everything that is filled in a record, with the place of its key: equal records write equal bytes, others don't.
fn write(record: &mut dyn Keyed, into: &mut Vec<u8>) {
    let text = |text: &str, into: &mut Vec<u8>| {
        into.extend((text.len() as u32).to_le_bytes());
        into.extend(text.bytes());
    };
    for at in 0..record.keys().len() {
        let Some(slot) = record.at(at) else {
            continue;
        };
        let begin = into.len();
        into.push(at as u8);
        let filled = into.len();
        match slot {
            Slot::Text(Some(typed)) => text(&typed.0, into),
            Slot::Texts(all) if !all.is_empty() => {
                into.push(all.len() as u8);
                for typed in all.iter() {
                    text(&typed.0, into);
                }
            }
            Slot::Held(true) => into.push(1),
            Slot::Number(number) => into.extend(number.to_le_bytes()),
            Slot::MaybeNumber(Some(number)) => into.extend(number.to_le_bytes()),
            Slot::Float(number) => into.extend(number.to_bits().to_le_bytes()),
            Slot::Rate(Some(rate)) => write(rate, into),
            Slot::Record(maybe) => {
                if let Some(record) = maybe.there() {
                    into.push(1);
                    write(record, into);
                    into.push(u8::MAX);
                }
            }
            Slot::Records(many) => {
                let mut at = 0;
                while let Some(record) = many.nth(at) {
                    into.push(1);
                    write(record, into);
                    into.push(u8::MAX);
                    at += 1;
                }
            }
            _ => {}
        }
        if into.len() == filled {
            into.truncate(begin);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn key(json: &str) -> Vec<u8> {
        let mut typed: Typed = serde_json::from_str(json).expect("a question");
        let mut key = Vec::new();
        write(&mut typed, &mut key);
        key
    }

    #[test]
    fn different_questions_have_different_keys() {
        let all = [
            r#"{"version":1,"species":"ash"}"#,
            r#"{"version":1,"region":"ash"}"#,
            r#"{"version":1,"species":"ash","none_in_reach":true}"#,
            r#"{"version":1,"species":"ash","stems":[{"diameter":"12"}]}"#,
            r#"{"version":1,"species":"ash","stems":[{"girth":"12"}]}"#,
            r#"{"version":1,"species":"ash","stems":[{"diameter":"1"},{"diameter":"2"}]}"#,
            r#"{"version":1,"species":"ash","stems":[{"diameter":"1","bark":"2"}]}"#,
            r#"{"version":1,"species":"ash","signs":["cavity"]}"#,
            r#"{"version":1,"species":"ash","targets":[{"kind":"path"}]}"#,
            r#"{"version":1,"species":"ash","place":{"latitude":"12"}}"#,
        ];
        let keys: std::collections::BTreeSet<Vec<u8>> = all.iter().map(|json| key(json)).collect();
        assert_eq!(keys.len(), all.len());
        assert_eq!(key(all[3]), key(all[3]));
    }
}
