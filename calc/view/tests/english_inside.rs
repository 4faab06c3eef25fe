//! English inside an answer in another language says that it is English, so that a screen reader speaks it right.

use calc::answer::Answer;
use calc::models::season::Local;
use calc::question::{Question, Typed, read};
use calc::reference::Reference;
use calc_view::answer::{HostOptions, answer};
use calc_view::out::Html;
use calc_view::text;
use calc_view::words::message::{pack, take_all, within};
use std::collections::BTreeSet;

/// A text, and the language that the elements around it say.
struct Read {
    text: String,
    lang: Option<String>,
}

/// Texts of markup as [`Html`] writes it, and those of attributes that are read aloud.
fn texts(html: &str) -> Vec<Read> {
    let mut all = Vec::new();
    let mut langs: Vec<Option<String>> = Vec::new();
    for piece in html.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').expect("a tag ends");
        let around = langs.last().cloned().flatten();
        if tag.starts_with('/') {
            langs.pop();
        } else {
            let attribute = |name: &str| {
                let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
                rest.split_once('"').map(|(value, _)| value.to_owned())
            };
            let lang = attribute("lang").or(around);
            for name in ["aria-label", "title", "placeholder"] {
                if let Some(text) = attribute(name) {
                    let lang = lang.clone();
                    all.push(Read { text, lang });
                }
            }
            let void = ["br", "hr", "img", "input", "link", "meta"];
            if !void.contains(&tag.split(' ').next().unwrap_or_default()) {
                langs.push(lang);
            }
        }
        all.push(Read {
            text: text.to_owned(),
            lang: langs.last().cloned().flatten(),
        });
    }
    assert!(langs.is_empty(), "every element is closed");
    all
}

/// Words that an English sentence can hardly do without, and Spanish does not have.
const ENGLISH: [&str; 16] = [
    "the", "and", "with", "of", "is", "are", "not", "for", "from", "which", "where", "that", "by",
    "at", "after", "to",
];

/// Names of offices and laws stay as they are in any language, and are no English text (WCAG 2.2, 3.1.2).
const NAMES: [&str; 2] = ["US Fish and Wildlife Service", "Wildlife & Countryside Act"];

/// Prose of the tables, as the core has it.
fn prose(reference: &Reference) -> Vec<&'static str> {
    let mut all: Vec<&str> = Vec::new();
    for caution in reference.cautions {
        all.extend([caution.subject, caution.sentence, caution.who]);
    }
    for authority in reference.regional.get().expect("it is inside").authorities {
        all.extend([authority.who, authority.law]);
    }
    for species in reference.species {
        for alike in species.look_alikes {
            all.extend([alike.name, alike.mark]);
        }
        all.extend(species.trials_told.iter().map(|told| told.text));
    }
    for restriction in reference.restrictions {
        all.extend([restriction.jurisdiction, restriction.force]);
    }
    all.extend(reference.disease_regions.iter().map(|it| it.authority));
    for user in reference.cavity_users {
        all.push(user.name);
    }
    for guide in reference.snag_guides {
        all.extend([guide.guidance, guide.per_acre, guide.note]);
    }
    all.extend(reference.outlook_species.iter().map(|row| row.note));
    all.extend(reference.sources.iter().map(|source| source.label));
    // Shorter ones, such as "UK", stand in other words too.
    all.retain(|text| text.len() > 6);
    all
}

/// What is English in markup and does not say so.
fn unmarked(html: &str, prose: &[&str]) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for Read { mut text, lang } in texts(html) {
        for name in NAMES {
            text = text.replace(name, "");
        }
        let mut words = text.split(|c: char| !c.is_alphabetic());
        let marked = lang.is_some_and(|lang| lang == "en" || lang == "la");
        let mut english = || {
            words.any(|word| ENGLISH.contains(&word))
                || prose.iter().any(|known| text.contains(*known))
        };
        if text.contains(['\u{11}', '\u{12}']) || (!marked && english()) {
            found.insert(text);
        }
    }
    found
}

fn answered(question: &Typed) -> Option<(Question, Answer)> {
    let reference = calc_data::whole();
    let question = read(reference, question).ok()?;
    let answer = calc::answer::answer(reference, &question, &Local::default());
    Some((question, answer))
}

/// The named questions, and one of them for trees and regions whose laws, animals, pests and look-alikes differ.
fn questions() -> Vec<(String, Typed)> {
    let mut all = examples::all(&examples::folder());
    let named = |name: &str| all.iter().find(|(known, _)| known == name).cloned();
    let (_, asked) = named("do").expect("a question");
    let mut more = Vec::new();
    let regions = [
        "US-WI", "US-CA", "US-VT", "US-MO", "US-NY", "CA-ON", "GB", "DE", "NZ", "AU-NSW",
    ];
    let species = [
        "northern red oak",
        "white ash",
        "Scots pine",
        "tree-of-heaven",
        "Siberian elm",
        "Norway spruce",
        "black locust",
        "Russian-olive",
        "black cherry",
    ];
    for (at, region) in regions.into_iter().enumerate() {
        for species in species.iter().cycle().skip(2 * at).take(3) {
            let mut asked = asked.clone();
            asked.species = Some((*species).into());
            asked.region = Some(region.into());
            more.push((format!("{species}, {region}"), asked));
        }
    }
    all.extend(more);
    all
}

#[test]
fn no_english_of_a_table_stands_unmarked_in_an_answer_in_spanish() {
    take_all();
    let reference = calc_data::whole();
    let prose = prose(reference);
    assert!(prose.len() > 500, "{}", prose.len());
    let mut answers = 0;
    let mut found = BTreeSet::new();
    for (name, asked) in questions() {
        let Some((question, answered)) = answered(&asked) else {
            continue;
        };
        answers += 1;
        within(pack("es"), || {
            let mut html = Html::default();
            let options = HostOptions {
                with_form: true,
                with_buttons: true,
                with_link: true,
                ..HostOptions::default()
            };
            answer(&mut html, reference, &question, &answered, &options);
            found.extend(unmarked(&html.into_string(), &prose));
            for plain in [text::answer, text::short] {
                let plain = plain(reference, &question, &answered, None);
                assert!(!plain.contains(['\u{11}', '\u{12}']), "{name}");
            }
        });
    }
    assert!(answers > 45, "{answers}");
    assert!(found.is_empty(), "{found:#?}");
}

#[test]
fn the_check_finds_english_that_is_not_marked() {
    let html = "<p>Quién decide: <span lang=\"en\">the owner</span>. <b>the label</b></p>";
    let found: Vec<String> = unmarked(html, &[]).into_iter().collect();
    assert_eq!(found, ["the label"]);
    assert_eq!(
        unmarked("<p>Palo, <i lang=\"la\">Acer</i></p>", &["Palo"]).len(),
        1
    );
}
