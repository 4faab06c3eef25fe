//! What every answer's markup must hold, over real questions of every outcome.

use super::{HostOptions, answer, problems};
use crate::out::Html;
use crate::text;
use calc::answer::{Answer, Outcome};
use calc::models::reach;
use calc::models::season::Local;
use calc::terms::method::Method;
use std::sync::OnceLock;

use calc::question::{Question, Text, Typed, read};

/// The invented maple with its leaf-out seen and a path far off.
fn maple() -> Typed {
    examples::named("do")
}

type Case = (String, Question, Answer);

/// The named questions, which between them give every outcome, and one more: people kept out.
fn cases() -> &'static [Case] {
    static CASES: OnceLock<Vec<Case>> = OnceLock::new();
    CASES.get_or_init(ask_all)
}

fn ask_all() -> Vec<Case> {
    let reference = calc_data::whole();
    let mut typed = examples::all(&examples::folder());
    let mut people_out = maple();
    people_out.targets[0].distance = Some(Text::from("140 ft"));
    typed.push(("people out".into(), people_out));
    typed
        .into_iter()
        .map(|(name, typed)| {
            let question = read(reference, &typed).unwrap_or_else(|problems| {
                panic!("{name}: {problems:?}");
            });
            let answer = calc::answer::answer(reference, &question, &Local::default());
            (name, question, answer)
        })
        .collect()
}

fn case(name: &str) -> &'static Case {
    let found = cases().iter().find(|case| case.0 == name);
    found.unwrap_or_else(|| panic!("no question {name}"))
}

fn html(question: &Question, found: &Answer, options: &HostOptions<'_>) -> String {
    let mut out = Html::default();
    answer(&mut out, calc_data::whole(), question, found, options);
    out.into_string()
}

fn with_all() -> HostOptions<'static> {
    HostOptions {
        sources_base: "/sources/",
        with_form: true,
        with_buttons: true,
        ..HostOptions::default()
    }
}

/// Every value of an attribute.
fn values<'a>(html: &'a str, attr: &str) -> Vec<&'a str> {
    let mark = format!(" {attr}=\"");
    html.split(&mark)
        .skip(1)
        .map(|rest| rest.split('"').next().unwrap_or(""))
        .collect()
}

/// The text of some markup, tags and drawings left out.
fn plain(question: &Question, found: &Answer) -> String {
    text::answer(calc_data::whole(), question, found, None)
}

#[test]
fn every_outcome_is_among_the_cases() {
    let outcomes: Vec<Outcome> = cases().iter().map(|case| case.2.outcome).collect();
    for outcome in [
        Outcome::Do,
        Outcome::Wait,
        Outcome::OtherMethod,
        Outcome::Professional,
        Outcome::CannotTell,
    ] {
        assert!(outcomes.contains(&outcome), "{outcome:?} is missing");
    }
}

#[test]
fn each_outcome_begins_with_its_frame() {
    for (name, question, found) in cases() {
        let text = plain(question, found);
        let frame = match found.outcome {
            Outcome::Do if found.asked_day.is_none() => "Ring this tree: ",
            Outcome::Do if found.stems.len() > 1 => "Ring ",
            Outcome::Do => "Ring this tree. ",
            Outcome::Wait => "Wait until ",
            Outcome::OtherMethod if found.headline_method == Method::LeaveIt => {
                "Leave this tree as it is. "
            }
            Outcome::OtherMethod => "Use another method: ",
            Outcome::Professional => "Leave this one to a professional. ",
            Outcome::CannotTell => "We can't tell yet. ",
        };
        assert!(
            text.lines()
                .any(|line| line.starts_with(frame) && line.ends_with('.')),
            "{name}: no line begins with {frame:?}"
        );
    }
}

#[test]
fn the_deciding_input_stands_in_the_first_sentence_with_its_number() {
    for (name, question, found) in cases() {
        let status = crate::status(
            crate::kind::Kind::TreePlan,
            calc_data::whole(),
            question,
            found,
        );
        assert!(status.chars().count() <= 140, "{name}: {status}");
        let decided = matches!(
            found.outcome,
            Outcome::Do | Outcome::Wait | Outcome::Professional
        );
        let numbered = status.bytes().any(|c| c.is_ascii_digit());
        let line = found.reach.outcome == reach::ReachOutcome::Line;
        assert!(
            numbered || !decided || line || *name == "weak",
            "{name}: {status}"
        );
    }
}

#[test]
fn a_stop_shows_no_ring_width_and_no_steps() {
    let mut stops = 0;
    for (name, question, found) in cases() {
        if found.outcome != Outcome::Professional {
            continue;
        }
        stops += 1;
        let html = html(question, found, &with_all());
        for never in [
            &*crate::words::m::CARD_N_RING,
            "Better =",
            "Score two",
            "Peel",
            "Saw ",
        ] {
            assert!(!html.contains(never), "{name} shows {never:?}");
        }
        let stop = html.find("card stop").expect("the card comes first");
        assert!(stop < html.find("class=\"two\"").unwrap_or(0), "{name}");
        let call = if found.reach.outcome == reach::ReachOutcome::Line {
            crate::words::m::CARD_CALL_LINE
        } else {
            crate::words::m::CARD_CALL_ARBORIST
        };
        assert!(html.contains(&*call), "{name} names nobody to call");
    }
    assert_eq!(stops, 3);
}

#[test]
fn headings_stand_in_order_without_skips_at_every_level() {
    for (name, question, found) in cases() {
        for level in 2..=5 {
            let options = HostOptions {
                heading_level: level,
                ..with_all()
            };
            let html = html(question, found, &options);
            let mut above = if level == 2 { 1 } else { level - 2 };
            for rest in html.split("<h").skip(1) {
                let Some(digit) = rest.bytes().next().filter(u8::is_ascii_digit) else {
                    continue;
                };
                let now = digit - b'0';
                assert!(now <= above + 1, "{name} at {level}: h{above} then h{now}");
                above = now;
            }
        }
    }
}

#[test]
fn every_id_is_there_once_and_every_reference_finds_it() {
    for (name, question, found) in cases() {
        let html = html(question, found, &with_all());
        let mut ids = values(&html, "id");
        let count = ids.len();
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), count, "{name}: an id stands twice");
        for id in values(&html, "aria-labelledby") {
            assert!(ids.contains(&id), "{name}: nothing has the id {id}");
        }
        let articles: Vec<String> = super::article::names()
            .map(|article| format!("/articles/{article}/"))
            .collect();
        for href in values(&html, "href") {
            assert!(
                href.starts_with("#f-")
                    || href.starts_with("#p-")
                    || href.starts_with("/sources/#")
                    || articles.iter().any(|article| article == href),
                "{name}: {href} leads nowhere"
            );
        }
    }
}

#[test]
fn every_source_link_is_a_source_of_the_tables() {
    let reference = calc_data::whole();
    for (name, question, found) in cases() {
        let html = html(question, found, &with_all());
        for href in values(&html, "href") {
            if let Some(id) = href.strip_prefix("/sources/#") {
                let mut known = reference.all_sources();
                assert!(
                    known.any(|line| line.id.text() == id),
                    "{name}: no source {id}"
                );
                assert!(!id.ends_with("-MEM"), "{name}: memory shown as a source");
            }
        }
    }
}

#[test]
fn nothing_promises_what_nobody_can() {
    for (name, question, found) in cases() {
        let text = plain(question, found);
        for word in text.split(|c: char| !c.is_alphabetic()) {
            let word = word.to_lowercase();
            assert!(
                ![
                    "safe",
                    "safely",
                    "ok",
                    "approved",
                    "guaranteed",
                    "nan",
                    "inf"
                ]
                .contains(&word.as_str()),
                "{name}: {word}"
            );
        }
    }
}

#[test]
fn plain_text_keeps_the_order_of_the_page() {
    let (_, question, found) = case("do");
    let text = plain(question, found);
    let parts = [
        "\nDO\n",
        "\nKEEP CLEAR\n",
        "\nCAUTIONS\n",
        "\nCHECK THESE TOO\n",
        "\nWHEN\n",
        "\nHOW LONG\n",
        "\nTHEN CHECK\n",
        "\nWHAT IT LEAVES\n",
        "\nMETHODS\n",
        "\nIS IT THIS TREE?\n",
        "\nHOW SURE, WHAT CHANGES IT\n",
        "\nWORKING\n",
    ];
    let at: Vec<usize> = parts
        .iter()
        .map(|part| {
            text.find(part)
                .unwrap_or_else(|| panic!("{part:?} is missing"))
        })
        .collect();
    assert!(at.is_sorted(), "{at:?}");
    assert!(!text.contains("</"), "markup in plain text");
}

#[test]
fn an_open_answer_says_first_what_is_missing_and_marks_the_rest() {
    for (name, question, found) in cases() {
        if found.outcome != Outcome::CannotTell {
            continue;
        }
        let html = html(question, found, &with_all());
        let missing = html.find("card cant").expect("what is missing");
        let conditional = html.find("p-if").expect("the answer if it is so");
        let otherwise = html.find("p-else").expect("the answer otherwise");
        assert!(missing < conditional && conditional < otherwise, "{name}");
        assert!(html.contains(&*crate::words::m::MISSING_ONLY_IF), "{name}");
        let ring = html.find(&*crate::words::m::CARD_N_RING);
        assert!(ring.is_none_or(|ring| ring > conditional), "{name}");
    }
}

#[test]
fn every_caution_of_the_answer_is_written_once() {
    let reference = calc_data::whole();
    for (name, question, found) in cases() {
        let html = html(question, found, &HostOptions::default());
        for line in &found.cautions {
            let caution = reference.cautions.iter().find(|it| it.id == line.id);
            let text = caution.expect("a caution of the tables").subject;
            let start: String = text
                .chars()
                .take_while(|c| *c != '.' && *c != '&')
                .collect();
            let start = start.replace('<', "&lt;").replace('>', "&gt;");
            assert!(html.contains(&start), "{name}: {} is dropped", line.id);
        }
    }
    for caution in reference.cautions {
        assert!(
            crate::words::m::cautions_short(caution.id).is_some(),
            "{} has no short name",
            caution.id
        );
    }
}

#[test]
fn every_assumption_and_every_row_of_the_method_table_has_words() {
    for (name, _, found) in cases() {
        for assumed in &found.assumed {
            assert!(
                crate::words::working::assumed_field(assumed.field).is_some(),
                "{name}: {}",
                assumed.field
            );
            assert!(
                assumed
                    .word
                    .is_none_or(|word| crate::words::working::assumed_word(word).is_some()),
                "{name}: {:?}",
                assumed.word
            );
        }
    }
    for rule in calc_data::whole().method_rules {
        for method in calc::terms::method::Method::ALL {
            assert!(
                crate::words::method::rule(rule.id, *method).is_some(),
                "{}",
                rule.id
            );
        }
    }
}

#[test]
fn the_summary_of_problems_links_each_to_its_field() {
    let mut typed = maple();
    typed.species = None;
    typed.stems[0].diameter = Some(Text::from("fourteen"));
    let found = read(calc_data::whole(), &typed).expect_err("two problems");
    let mut out = Html::default();
    problems(&mut out, &found, &HostOptions::default());
    let html = out.into_string();
    assert_eq!(values(&html, "href"), ["#f-species", "#f-stems-0-diameter"]);
    assert!(html.contains("There are 2 things to fix"));
    for problem in &found {
        assert!(html.contains(&crate::problem_text(problem)));
    }
}

#[test]
fn the_year_tape_marks_today_beside_the_day_of_the_work() {
    let tape = |today: &str| {
        let typed = Typed {
            today: Some(Text::from(today)),
            ..maple()
        };
        let reference = calc_data::whole();
        let question = read(reference, &typed).expect("a good question");
        let found = calc::answer::answer(reference, &question, &Local::default());
        let html = html(&question, &found, &HostOptions::default());
        let from = html.find("The bark in 2027").expect("the year tape");
        let to = html[from..].find("</svg>").expect("its end");
        html[from..from + to].to_owned()
    };
    assert!(tape("2027-03-02").contains(">today<"));
    // Another year has no place on it, and the day itself is marked once.
    assert!(!tape("2026-11-25").contains(">today<"));
    assert!(!tape("2027-06-12").contains(">today<"));
}

/// Words that are on the page before anything is opened, told from the short text: 700 at most.
#[test]
fn the_first_view_of_an_answer_has_700_words_at_most() {
    for (name, question, found) in cases() {
        let short = text::short(calc_data::whole(), question, found, None);
        let words = short.split_whitespace().count();
        assert!(words <= 700, "{name}: {words} words");
        let whole = plain(question, found);
        assert!(whole.len() > short.len(), "{name}: nothing is folded");
    }
}

/// Lengths of the card by which it fits a phone's screen: 52 characters for the sentence where one tree is named in
/// it, 70 for the line under it, 75 for a fold's line.
#[test]
fn a_card_keeps_its_lengths() {
    for (name, question, found) in cases() {
        let html = html(question, found, &with_all());
        let say = inner(&html, "class=\"say\"");
        assert!(say.chars().count() <= 52, "{name}: {say}");
        if html.contains("class=\"next\"") {
            let next = inner(&html, "class=\"next\"");
            assert!(next.chars().count() <= 78, "{name}: {next}");
        }
        for value in html.split("<dd><b>").skip(1) {
            let value = value.split("</b>").next().unwrap_or("");
            let bare: String = strip(value);
            assert!(bare.chars().count() <= 12, "{name}: {bare}");
        }
        for fold in html.split("<details class=\"fold").skip(1) {
            let key = inner(fold, "class=\"soft\"");
            assert!(key.chars().count() <= 110, "{name}: {key}");
        }
    }
}

/// The text of the first element with an attribute.
fn inner(html: &str, mark: &str) -> String {
    let at = html.find(mark).unwrap_or_else(|| panic!("no {mark}"));
    let text = html[at..].split_once('>').map_or("", |(_, rest)| rest);
    text.split('<').next().unwrap_or("").to_owned()
}

/// Markup without its tags.
fn strip(html: &str) -> String {
    let mut text = String::new();
    for piece in html.split('<') {
        text.push_str(piece.split_once('>').map_or(piece, |(_, rest)| rest));
    }
    text
}
