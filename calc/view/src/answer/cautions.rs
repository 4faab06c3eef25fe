//! Cautions: three in view, the others folded under one line, none dropped; who decides stands with each.

use super::frame::{Part, Region, lead, open_fold};
use super::group;
use super::sources::{cited, is_bare};
use crate::page::Page;
use crate::words::prose::prose;
use crate::words::{Word, m};
use calc::models::cautions::{Caution, CautionLine, When};
use calc::terms::small::find;

/// So many stand in view.
const IN_VIEW: usize = 3;

/// The cautions of the answer and those that only the conditional answer has, each once, in the order of the answer.
fn lines<'a>(cx: &Region<'a>) -> Vec<&'a CautionLine> {
    let answer = cx.say.answer;
    let inner = answer.conditional.iter().flat_map(|it| &it.answer.cautions);
    let mut list: Vec<&CautionLine> = Vec::new();
    for line in answer.cautions.iter().chain(inner) {
        if !list.iter().any(|known| known.id == line.id) {
            list.push(line);
        }
    }
    list
}

/// How near to the front a caution stands: what stops, then what this species brings, then whose tree it is, nests,
/// a look up; the rest as the answer has them.
fn rank(line: &CautionLine) -> u8 {
    match line.id {
        _ if line.merged => 9,
        _ if line.when == When::Stop => 0,
        id if id.starts_with("DZ") => 1,
        id if id.starts_with("TX") || id.starts_with("TH") => 2,
        "LW1" => 3,
        "LW5" | "LW6" | "LW10" => 4,
        "ED4" => 5,
        _ => 6,
    }
}

/// Which stand in view.
fn in_view<'a>(lines: &[&'a CautionLine]) -> Vec<&'a CautionLine> {
    let mut view: Vec<&CautionLine> = Vec::new();
    for at in 0..9 {
        for line in lines.iter().filter(|line| rank(line) == at) {
            if view.len() < IN_VIEW {
                view.push(line);
            }
        }
    }
    view
}

/// The part: three in view, in a stop the one that stops; the others folded.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-caut",
        id: "cautions",
        title: if cx.stops() {
            m::CAUTIONS_WHO_DECIDES_HERE.into()
        } else {
            m::CAUTIONS_TITLE.into()
        },
        key: String::new(),
        body: few,
    }
}

fn few(out: &mut Page<'_>, cx: &Region<'_>) {
    let lines = lines(cx);
    let mut view = in_view(&lines);
    // A stop says in its card what holds: here only who decides; the caution itself is the first of the fold.
    let decides = if cx.stops() {
        view.drain(..).find(|line| !line.who.is_empty())
    } else {
        None
    };
    if let Some(line) = decides {
        out.open_class("div", "note");
        who(out, line, false);
        group::beside(out, cx, line.id, &[line.id]);
        out.close();
    }
    let mut ids: Vec<&str> = decides.iter().map(|line| line.id).collect();
    for line in &view {
        ids.push(line.id);
    }
    for line in &view {
        caution(out, cx, line, &ids, false);
    }
    group::rest(out, cx, &ids);
    let mut rest: Vec<&CautionLine> = lines
        .iter()
        .filter(|line| !view.iter().any(|it| it.id == line.id))
        .copied()
        .collect();
    rest.sort_by_key(|line| line.when != When::Stop);
    let key = cx.say.key_cautions(&names(&rest));
    open_fold(out, cx, "p-too", "too", &m::LINES_CHECK_TOO, &key);
    for line in &rest {
        caution(out, cx, line, &[], true);
    }
    for line in &view {
        law(out, cx, line);
    }
    out.close_two();
}

/// All of them, folded under who decides: in a stop where no group has words of its own.
pub(super) fn who_decides(cx: &Region<'_>) -> Part {
    let lines = lines(cx);
    let decides = in_view(&lines)
        .into_iter()
        .find(|line| !line.who.is_empty());
    let part = all(cx);
    Part {
        title: m::CAUTIONS_AND_WHO.into(),
        key: match decides {
            Some(line) => cat!(crate::words::phrase::sentence(&prose(line.who)), "."),
            None => part.key,
        },
        ..part
    }
}

/// All of them, folded: where nothing may be started yet.
pub(super) fn all(cx: &Region<'_>) -> Part {
    Part {
        class: "p-caut",
        id: "cautions",
        title: m::CAUTIONS_TITLE.into(),
        key: cx.say.key_cautions(&names(&lines(cx))),
        body: |out, cx| {
            let mut lines = lines(cx);
            lines.sort_by_key(|line| line.when != When::Stop);
            for line in &lines {
                caution(out, cx, line, &[], true);
            }
            group::rest(out, cx, &[]);
        },
    }
}

fn names(lines: &[&CautionLine]) -> Vec<&'static str> {
    let name = |line: &&CautionLine| m::cautions_short(line.id).map_or("", Word::text);
    lines.iter().map(name).collect()
}

fn known(cx: &Region<'_>, id: &str) -> Option<&'static Caution> {
    cx.say
        .reference
        .cautions
        .iter()
        .find(|caution| caution.id == id)
}

/// What a caution says, with the answer's own distance in it.
fn sentence(cx: &Region<'_>, caution: &Caution) -> String {
    const PEOPLE_OUT: &str = "{people_out}";
    let said = prose(caution.sentence);
    match find::place(&said, PEOPLE_OUT) {
        Some(at) => {
            let (before, rest) = find::cut(&said, at);
            let answer = cx.say.answer;
            let people = cx
                .say
                .reach(answer.people_out_m.unwrap_or(answer.reach.two_heights_m));
            cat!(before, people, find::behind(rest, PEOPLE_OUT.len()))
        }
        None => said,
    }
}

/// A caution with who decides; `whole` with the law's words and its sources too.
fn caution(out: &mut Page<'_>, cx: &Region<'_>, line: &CautionLine, in_view: &[&str], whole: bool) {
    let Some(caution) = known(cx, line.id) else {
        return;
    };
    out.open_class("div", "note");
    lead(out, prose(caution.subject), sentence(cx, caution));
    who(out, line, line.law.is_empty() && caution.when == When::Law);
    if whole {
        backing(out, cx, line);
    }
    group::beside(out, cx, line.id, in_view);
    out.close();
}

/// Who decides; where nobody of us read the law, whom to ask.
fn who(out: &mut Page<'_>, line: &CautionLine, asks: bool) {
    if line.who.is_empty() {
        return;
    }
    out.p_class(
        "soft",
        match asks {
            true => m::cautions_decides_ask(prose(line.who)),
            false => m::cautions_decides(prose(line.who)),
        },
    );
}

/// What the law says, and what a caution rests on.
fn backing(out: &mut Page<'_>, cx: &Region<'_>, line: &CautionLine) {
    out.open_class("p", "soft");
    if !line.law.is_empty() {
        out.text(cat!(&prose(line.law), ". "));
    }
    let cites = &line.because;
    if cites.iter().any(|cite| !is_bare(cite)) {
        cited(out, cx, &m::MEASURE_SOURCE, cites);
    } else if !cites.is_empty() {
        out.text(m::CAUTIONS_NO_SOURCE);
    }
    out.close();
}

/// The same of a caution that stands in view.
fn law(out: &mut Page<'_>, cx: &Region<'_>, line: &CautionLine) {
    out.open_class("div", "note");
    out.open("p");
    out.leaf(
        "b",
        cat!(
            crate::words::phrase::sentence(m::cautions_short(line.id).map_or("", Word::text)),
            "."
        ),
    );
    out.close();
    backing(out, cx, line);
    out.close();
}
