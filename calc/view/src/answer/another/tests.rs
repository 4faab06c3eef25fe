//! What the marks say, where they stand, what a move makes of the question, and what the line of changes tells.

use super::{MovedMarks, Trial, Trying, Which};
use crate::answer::HostOptions;
use crate::form::Sheet;
use crate::out::Html;
use calc::answer::{Answer, year_ahead};
use calc::models::season::Local;
use calc::question::{Question, Text, Typed, read};
use calc::timing::Span;
use chrono::NaiveDate;

/// A question as typed, as read, and its answer.
struct Asked {
    typed: Typed,
    question: Question,
    answer: Answer,
    days: Vec<Span>,
}

fn ask(typed: Typed) -> Asked {
    let reference = calc_data::whole();
    let question = read(reference, &typed).expect("a good question");
    let answer = calc::answer::without_changes(reference, &question, &Local::default());
    let days = year_ahead(reference, &question, &Local::default());
    Asked {
        typed,
        question,
        answer,
        days,
    }
}

/// The invented maple on 12 June 2027, with a path at 180 ft.
fn maple() -> Typed {
    examples::named("do")
}

impl Asked {
    fn options(&self) -> HostOptions<'_> {
        HostOptions {
            with_form: true,
            another: Some(Trial {
                question: &self.question,
                answer: &self.answer,
                days: &self.days,
            }),
            ..HostOptions::default()
        }
    }

    /// Runs something over the marks as they were asked.
    fn rest<T>(&self, run: impl FnOnce(&Trying<'_>) -> T) -> T {
        let options = self.options();
        run(&Trying::new(
            calc_data::whole(),
            &self.question,
            &self.answer,
            &options,
        ))
    }

    /// The question with a mark at a step, and what stands then.
    fn step(&self, which: Which, step: i32) -> Stands {
        let mut moved = MovedMarks::default();
        self.rest(|trying| trying.set_step(&mut moved, which, step));
        self.then(moved)
    }

    fn text(&self, which: Which, text: &str) -> Stands {
        let mut moved = MovedMarks::default();
        self.rest(|trying| trying.set_text(&mut moved, which, text));
        self.then(moved)
    }

    fn then(&self, moved: MovedMarks) -> Stands {
        let reference = calc_data::whole();
        let (question, unread) = self
            .rest(|trying| trying.read(&moved, &self.typed))
            .expect("it can be read");
        let answer = calc::answer::without_changes(reference, &question, &Local::default());
        let options = self.options();
        let trying = Trying::new(reference, &question, &answer, &options);
        let drawn = |draw: &dyn Fn(&mut Html)| {
            let mut out = Html::default();
            draw(&mut out);
            out.into_string()
        };
        Stands {
            marks: trying
                .marks(&moved)
                .into_iter()
                .map(|mark| (mark.which, mark.at, mark.said))
                .collect(),
            changes: drawn(&|out| trying.changes(out)),
            tapes: Which::ALL.map(|which| drawn(&|out| trying.tape(out, which))),
            moved,
            question,
            unread: unread
                .iter()
                .map(|(which, problem)| (*which, crate::problem_text(problem)))
                .collect(),
        }
    }
}

struct Stands {
    marks: Vec<(Which, i32, String)>,
    changes: String,
    tapes: [String; 3],
    moved: MovedMarks,
    question: Question,
    unread: Vec<(Which, String)>,
}

impl Stands {
    fn said(&self, which: Which) -> &str {
        let mark = self.marks.iter().find(|mark| mark.0 == which);
        mark.map_or("", |mark| &mark.2)
    }

    fn has(&self, words: &str) {
        assert!(self.changes.contains(words), "{words}: {}", self.changes);
    }
}

#[test]
fn a_mark_says_its_value_and_its_band() {
    let asked = ask(maple());
    let rest = asked.then(MovedMarks::default());
    assert_eq!(rest.said(Which::Day), "12 June, best");
    assert_eq!(rest.said(Which::Far), "180 feet, outside");
    assert_eq!(rest.said(Which::Size), "14½ inches");
    // 28 July is day 209, 1 January day 1.
    assert_eq!(
        asked.step(Which::Day, 209).said(Which::Day),
        "28 July, bonding"
    );
    assert_eq!(
        asked.step(Which::Day, 0).said(Which::Day),
        "1 January 2028, does not slip"
    );
    assert_eq!(
        asked.step(Which::Far, 40).said(Which::Far),
        "40 feet, it can land here"
    );
    assert_eq!(
        asked.step(Which::Far, 100).said(Which::Far),
        "100 feet, it can throw wood here"
    );
    assert_eq!(asked.step(Which::Size, 32).said(Which::Size), "16 inches");
}

#[test]
fn what_the_answer_was_and_is_stands_in_one_line_with_what_changed() {
    let asked = ask(maple());
    asked
        .then(MovedMarks::default())
        .has("Move a mark. The answer follows.");
    let day = asked.step(Which::Day, 240);
    day.has("chip do old");
    day.has("chip wait");
    day.has("Changed: day 12 June → 28 August");
    let far = asked.step(Which::Far, 40);
    far.has("chip stop");
    far.has("Changed: path 180 → 40 ft.");
    let size = asked.step(Which::Size, 32);
    size.has("chip do old");
    size.has("Changed: trunk 14½ → 16 in; ring 14½ → 16 in; minutes 9 → ");
    size.has("Use these");
    size.has("Put it back");
}

#[test]
fn a_mark_put_back_where_it_was_rests() {
    let asked = ask(maple());
    for (which, at) in [(Which::Day, 163), (Which::Far, 180), (Which::Size, 29)] {
        assert!(asked.step(which, at).moved.none(), "{which:?}");
        let there = asked.step(which, at + 3);
        assert!(!there.moved.none(), "{which:?}");
        let drawn = &there.tapes[which as usize];
        assert_eq!(drawn.matches("ghost").count(), 1, "{drawn}");
    }
    assert!(asked.text(Which::Size, " ").moved.none());
    let rest = asked.then(MovedMarks::default());
    assert!(rest.tapes.iter().all(|tape| !tape.contains("ghost")));
}

#[test]
fn what_is_typed_beyond_the_tape_stays_and_the_mark_waits_at_its_end() {
    let asked = ask(maple());
    let far = asked.text(Which::Far, "900 ft");
    let mark = &far.marks[1];
    assert_eq!((mark.1, &*mark.2), (250, "900 feet, outside"));
    let distance = far.question.tree.targets[0].distance.expect("a distance");
    assert!((distance.m() - 900.0 * 0.3048).abs() < 1e-9);
    let size = asked.text(Which::Size, "60 in");
    assert_eq!(
        (size.marks[2].1, size.said(Which::Size)),
        (60, "60 inches, beyond the tape")
    );
    let day = asked.text(Which::Day, "2030-03-01");
    assert_eq!(day.marks[0].1, 365);
    assert_eq!(day.said(Which::Day), "1 March 2030, beyond the tape");
}

#[test]
fn where_nothing_is_near_the_flag_asks_how_near_a_path_could_be() {
    let mut typed = maple();
    typed.targets.clear();
    typed.none_in_reach = true;
    let asked = ask(typed);
    let rest = asked.then(MovedMarks::default());
    let end = rest.marks[1].1;
    assert_eq!(rest.said(Which::Far), "nothing near");
    let near = asked.step(Which::Far, 40);
    assert!(!near.question.tree.none_in_reach);
    near.has("chip stop");
    near.has("nothing near → a path at 40 ft");
    assert!(asked.step(Which::Far, end).moved.none());
}

#[test]
fn no_day_that_is_gone_by_is_offered() {
    let ends = |date: &str, today: &str| {
        let mut typed = maple();
        typed.date = Some(Text::from(date));
        typed.today = Some(Text::from(today));
        let days = ask(typed).days;
        for pair in days.windows(2) {
            assert_eq!(pair[0].to.succ_opt(), Some(pair[1].from), "without holes");
        }
        [days[0].from, days[days.len() - 1].to].map(|day| day.to_string())
    };
    assert_eq!(
        ends("2027-06-12", "2026-11-29"),
        ["2027-01-01", "2027-12-31"]
    );
    assert_eq!(
        ends("2027-06-12", "2027-03-01"),
        ["2027-03-01", "2028-02-29"]
    );
    assert_eq!(
        ends("2027-06-12", "2027-06-12"),
        ["2027-06-12", "2028-06-11"]
    );
    // A day that is over was asked about on purpose.
    assert_eq!(
        ends("2027-06-12", "2027-07-01"),
        ["2027-01-01", "2027-12-31"]
    );
    // In November a day of May is one of next year.
    let mut typed = maple();
    typed.date = Some(Text::from("2026-11-29"));
    typed.today = Some(Text::from("2026-11-29"));
    let asked = ask(typed);
    let may = asked.step(Which::Day, 130);
    assert_eq!(may.question.day.start().to_string(), "2027-05-10");
    assert!(
        may.said(Which::Day).starts_with("10 May 2027, "),
        "{}",
        may.said(Which::Day)
    );
}

#[test]
fn nothing_is_tried_where_the_answer_stops_or_is_open() {
    let mut typed = maple();
    typed.targets[0].distance = Some(Text::from("40 ft"));
    let stop = ask(typed);
    assert_eq!(
        stop.rest(|trying| trying.marks(&MovedMarks::default()).len()),
        0
    );
    let mut typed = maple();
    typed.targets[0].distance = None;
    let open = ask(typed);
    assert_eq!(
        open.rest(|trying| trying.marks(&MovedMarks::default()).len()),
        0
    );
}

#[test]
fn what_was_moved_goes_into_the_form_as_if_it_had_been_typed() {
    let reference = calc_data::whole();
    let today = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a day");
    let asked = ask(maple());
    let mut moved = MovedMarks::default();
    asked.rest(|trying| {
        trying.set_step(&mut moved, Which::Day, 209);
        trying.set_text(&mut moved, Which::Far, "150");
        trying.set_step(&mut moved, Which::Size, 32);
    });
    let mut sheet = Sheet::of(reference, &asked.typed, today);
    asked.rest(|trying| trying.write(&moved, &mut sheet, today));
    let typed = sheet.typed(reference, today);
    let question = read(reference, &typed).expect("a good question");
    assert_eq!(question.day.start().to_string(), "2027-07-28");
    let far = question.tree.targets[0].distance.expect("a distance").m();
    assert!((far - 150.0 * 0.3048).abs() < 1e-9, "{far}");
    assert!((question.tree.largest().dbh.mm() - 16.0 * 25.4).abs() < 1e-9);
}

#[test]
fn what_cannot_be_read_is_told_and_the_other_marks_still_move() {
    let asked = ask(maple());
    let mut moved = MovedMarks::default();
    asked.rest(|trying| {
        trying.set_text(&mut moved, Which::Size, "ten-ish");
        trying.set_step(&mut moved, Which::Far, 40);
    });
    let stands = asked.then(moved);
    stands.has("path 180 → 40 ft.");
    assert_eq!(stands.unread.len(), 1, "{:?}", stands.unread);
    assert_eq!(stands.unread[0].0, Which::Size);
    assert!(!stands.unread[0].1.is_empty());
    assert!((stands.question.tree.largest().dbh.mm() - 14.5 * 25.4).abs() < 1e-9);
    assert!(asked.step(Which::Size, 32).unread.is_empty());
}

#[test]
fn what_was_seen_of_one_spring_does_not_stand_in_the_way_of_another() {
    let asked = ask(maple());
    assert!(asked.question.leafed_out.is_some());
    let next = asked.text(Which::Day, "2028-05-20");
    assert!(next.question.leafed_out.is_none());
    next.has("day 12 June → 20 May 2028");
}

#[test]
fn metric_readers_move_by_metres_and_centimetres() {
    let mut typed = maple();
    typed.units = Some(Text::from("metric"));
    typed.stems[0].diameter = Some(Text::from("37 cm"));
    typed.targets[0].distance = Some(Text::from("55 m"));
    let asked = ask(typed);
    let rest = asked.then(MovedMarks::default());
    assert_eq!((rest.marks[1].1, rest.marks[2].1), (55, 37));
    let far = asked.step(Which::Far, 12);
    assert_eq!(far.said(Which::Far), "12 metres, it can land here");
    assert_eq!(
        asked.step(Which::Size, 38).said(Which::Size),
        "38 centimetres"
    );
}

#[test]
fn without_a_form_the_tapes_are_plain_drawings() {
    let asked = ask(maple());
    let options = HostOptions {
        with_form: false,
        ..asked.options()
    };
    let mut out = Html::default();
    crate::answer::answer(
        &mut out,
        calc_data::whole(),
        &asked.question,
        &asked.answer,
        &options,
    );
    let html = out.into_string();
    assert_eq!(html.matches("class=\"strip\"").count(), 3);
    assert!(
        !html.contains("<input") && !html.contains("try-back"),
        "{html}"
    );
    assert!(html.contains("Nesting birds: look first"));
}
