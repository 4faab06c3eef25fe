//! The nine methods side by side.

use super::build::{Cx, close_table, open_part, open_table, row_head};
use super::make::title;
use crate::out::Page;
use crate::words as w;
use calc::model::method::{Level, MethodLine};

/// The part: nine rows, level, who, reasons.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    open_part(
        out,
        cx,
        "p-hide p-meth",
        "meth",
        w::METHODS[0],
        w::METHODS[1],
    );
    open_table(out, false, &title(cx), &w::HEAD_METHODS);
    for line in &answer.methods {
        let level = w::level(line.level);
        let stands = if line.level >= Level::NotAdvised {
            cat!(level, ".")
        } else {
            let who = w::who(line.method, line.by_professional, cx.say.question.herbicide);
            cat!(level, ", ", w::BY, who, ".")
        };
        let mut name = w::sentence(w::method(line.method));
        if line.method == answer.headline_method {
            name.push_str(w::THIS_ONE);
        }
        out.open("tr");
        row_head(out, &name);
        out.open("td");
        out.leaf("b", &w::sentence(&stands));
        out.text(" ");
        out.text(&why(line));
        out.close_two();
    }
    close_table(out);
    out.close();
}

/// The reasons that made the level, then when it works and what it leaves.
fn why(line: &MethodLine) -> String {
    let mut list: Vec<&str> = Vec::new();
    for reason in &line.reasons {
        let lowers = reason.at_most == line.level && line.level > Level::Recommended;
        if (lowers || reason.by_professional)
            && let Some(words) = w::rule(reason.rule, line.method)
            && !list.contains(&words)
        {
            list.push(words);
        }
    }
    let because = if list.is_empty() {
        String::new()
    } else {
        cat!(w::sentence(&list.join("; ")), ". ")
    };
    if line.level >= Level::NotAdvised {
        return because.trim_end().into();
    }
    cat!(
        because,
        w::sentence(w::months(line.method)),
        ". ",
        w::LEAVES_BEHIND,
        w::leaves(line.method),
        "."
    )
}
