//! Words that are damaged stop the build, at a file and a line. Each check reads small files with the build's own code.

#[path = "../build/check.rs"]
#[allow(dead_code, reason = "the build reads more of a message")]
mod check;
#[path = "../build/enums.rs"]
mod enums;
#[path = "../build/file.rs"]
mod file;
#[path = "../build/languages.rs"]
#[allow(dead_code, reason = "the build reads folders")]
mod languages;
#[path = "../build/markup.rs"]
#[allow(dead_code, reason = "the build stretches it")]
mod markup;
#[path = "../build/pack.rs"]
#[allow(dead_code, reason = "the build writes packs")]
mod pack;
#[path = "../build/tables.rs"]
#[allow(dead_code, reason = "the build reads the tables")]
mod tables;
#[path = "../src/words/text_key.rs"]
mod text_key;

use file::Problems;
use languages::Language;

/// Reads one file a language.
fn language(name: &str, text: &str) -> Result<Language, Problems> {
    let folder = format!("content/words/{name}");
    Ok(Language {
        name: name.to_owned(),
        messages: file::read(&format!("{folder}/verdict.ftl"), text)?,
        folder,
        tables: Vec::new(),
        names: Vec::new(),
    })
}

fn whole(languages: &[(&str, &str)]) -> Result<Vec<check::Whole>, Problems> {
    let mut all = Vec::new();
    for (name, text) in languages {
        all.push(language(name, text)?);
    }
    Ok(check::languages(all, &enums::all(), &[])?.1)
}

/// What stops the build: one problem, said so.
#[track_caller]
fn stops(english: &str, spanish: &str, says: &str) {
    match whole(&[("en", english), ("es", spanish)]) {
        Ok(_) => panic!("the damage goes unnoticed: {says}"),
        Err(problems) => assert_eq!(problems, [says]),
    }
}

const ENGLISH: &str = "\
# $window (Length)
verdict-wait = Wait until { $window }.
verdict-do = Ring it.
# $count (Count)
# $window (Length)
verdict-visits = { $count ->
    [one] one visit in { $window }
   *[other] { $count } visits in { $window }
}
# $of (Durability)
verdict-wood =
    .a = longest
    .b = long
    .c = middling
    .d = short
";

const SPANISH: &str = "\
verdict-wait = Espere hasta { $window }.
verdict-do = Anille.
verdict-visits = { $count ->
    [one] una visita en { $window }
   *[other] { $count } visitas en { $window }
}
verdict-wood =
    .a = la más duradera
    .b = duradera
    .c = mediana
    .d = corta
";

/// The same with one text in the place of another.
#[track_caller]
fn with(text: &str, from: &str, to: &str) -> String {
    assert!(text.contains(from), "{from} does not stand there");
    text.replacen(from, to, 1)
}

#[test]
fn what_is_whole_is_read() {
    let languages = whole(&[("en", ENGLISH), ("es", SPANISH)]).expect("nothing is damaged");
    for language in &languages {
        assert_eq!(language.wordings.len(), 7, "{}", language.name);
    }
}

#[test]
fn a_message_that_a_language_lacks_is_named_with_where_it_stands() {
    stops(
        ENGLISH,
        &with(SPANISH, "verdict-do = Anille.\n", ""),
        "content/words/es: verdict-do is missing; it stands at content/words/en/verdict.ftl:3",
    );
}

#[test]
fn a_message_that_the_first_language_lacks_is_too_many() {
    stops(
        ENGLISH,
        &with(SPANISH, "verdict-do", "verdict-no = No.\nverdict-do"),
        "content/words/es/verdict.ftl:2: verdict-no is not a message of en",
    );
}

#[test]
fn a_message_stands_once() {
    stops(
        ENGLISH,
        &with(
            SPANISH,
            "verdict-visits",
            "verdict-do = Hágalo.\nverdict-visits",
        ),
        "content/words/es/verdict.ftl:3: verdict-do: stands also at content/words/es/verdict.ftl:2",
    );
}

#[test]
fn a_gap_that_is_not_filled_is_missing_also_in_one_case_of_a_choice() {
    stops(
        ENGLISH,
        &with(SPANISH, "hasta { $window }", "más"),
        "content/words/es/verdict.ftl:1: verdict-wait: $window is missing",
    );
    stops(
        ENGLISH,
        &with(SPANISH, "una visita en { $window }", "una visita"),
        "content/words/es/verdict.ftl:3: verdict-visits: $window is missing in [one]",
    );
    stops(
        &with(
            ENGLISH,
            "{ $count } visits in { $window }",
            "{ $count } visits",
        ),
        SPANISH,
        "content/words/en/verdict.ftl:6: verdict-visits: $window is missing in [other]",
    );
}

#[test]
fn a_count_may_be_said_in_words_where_the_case_tells_it_and_nowhere_else() {
    stops(
        ENGLISH,
        &with(SPANISH, "{ $count } visitas", "unas visitas"),
        "content/words/es/verdict.ftl:3: verdict-visits: $count is missing in [other]",
    );
}

#[test]
fn a_gap_has_the_name_and_the_kind_that_the_first_language_gives_it() {
    stops(
        ENGLISH,
        &with(
            SPANISH,
            "hasta { $window }",
            "hasta { $window }, { $ventana }",
        ),
        "content/words/es/verdict.ftl:1: verdict-wait: $ventana is not a gap of it",
    );
    stops(
        &with(ENGLISH, "# $window (Length)\n", ""),
        &with(SPANISH, "{ $window }", "mayo"),
        "content/words/en/verdict.ftl:1: verdict-wait: say what $window is, as `# $window (Length)`",
    );
    stops(
        &with(ENGLISH, "(Length)", "(Window)"),
        &with(SPANISH, "{ $window }", "mayo"),
        "content/words/en/verdict.ftl:1: verdict-wait: $window: no type `Window`",
    );
}

#[test]
fn every_variant_has_its_words_and_all_words_their_variant() {
    stops(
        &with(ENGLISH, "    .c = middling\n", ""),
        &with(SPANISH, "    .c = mediana\n", ""),
        "content/words/en/verdict.ftl:11: verdict-wood: .c is missing",
    );
    stops(
        ENGLISH,
        &with(SPANISH, "    .c = mediana\n", ""),
        "content/words/es/verdict.ftl:7: verdict-wood: .c is missing",
    );
    stops(
        ENGLISH,
        &with(SPANISH, "    .c", "    .moss = musgo\n    .c"),
        "content/words/es/verdict.ftl:10: verdict-wood.moss: no such word in en",
    );
}

#[test]
fn a_plural_is_one_of_the_language() {
    stops(
        ENGLISH,
        &with(SPANISH, "[one]", "[few]"),
        "content/words/es/verdict.ftl:3: verdict-visits: [few] is no plural of es",
    );
    stops(
        &with(
            ENGLISH,
            "{ $count ->\n    [one] one visit",
            "{ $window ->\n    [one] { $count } visit",
        ),
        SPANISH,
        "content/words/en/verdict.ftl:6: verdict-visits: nothing is chosen by $window (Length)",
    );
}

#[test]
fn words_are_text_and_not_markup() {
    stops(
        ENGLISH,
        &with(SPANISH, "Anille", "<b>Anille"),
        "content/words/es/verdict.ftl:2: verdict-do: '<' in it: words are text, not markup",
    );
}

#[test]
fn what_is_beyond_the_subset_is_refused() {
    let says = "only { $gap }, { message }, { \"text\" } and a choice by a gap are read here";
    stops(
        ENGLISH,
        &with(SPANISH, "{ $window }", "{ NUMBER($window) }"),
        &format!("content/words/es/verdict.ftl:1: verdict-wait: {says}"),
    );
    stops(
        ENGLISH,
        &with(SPANISH, "verdict-do", "-tree = árbol\nverdict-do"),
        "content/words/es/verdict.ftl:2: -tree: no terms are read here",
    );
}

#[test]
fn a_line_that_is_no_fluent_is_told_alone() {
    stops(
        ENGLISH,
        &with(SPANISH, "{ $window }", "{ $window "),
        "content/words/es/verdict.ftl:1: Expected a token starting with \"}\"",
    );
}

#[test]
fn a_message_may_be_put_into_another_one_of_its_language() {
    let english = "a-tool = saw\na-take = Take a { a-tool }.\n";
    let spanish = "a-tool = sierra\na-take = Tome una { a-tool }.\n";
    let languages = whole(&[("en", english), ("es", spanish)]).expect("whole");
    let said = |at: usize| pack::wording(&languages[at].wordings[1], &[]);
    assert_eq!((&*said(0), &*said(1)), ("Take a saw.", "Tome una sierra."));
    stops(
        english,
        &with(spanish, "{ a-tool }", "{ a-herramienta }"),
        "content/words/es/verdict.ftl:2: a-take: a-herramienta is no plain message",
    );
}

#[test]
fn a_language_of_one_country_tells_only_what_differs() {
    let spain = "verdict-do = Anille usted.\n";
    let all = [("en", ENGLISH), ("es", SPANISH), ("es-ES", spain)];
    let languages = whole(&all).expect("whole");
    let said = |at: usize| pack::wording(&languages[2].wordings[at], &["window"]);
    assert_eq!(said(0), "Espere hasta \u{1}.");
    assert_eq!(said(1), "Anille usted.");
    assert_eq!(languages[2].decimal, ',');
}

#[test]
fn a_language_without_rules_is_told() {
    let problems = whole(&[("en", ENGLISH), ("pt", ENGLISH)]).err();
    assert_eq!(
        problems.unwrap_or_default(),
        [
            "content/words/pt: the plurals and the decimal sign of pt are not told: RULES in calc/view/build/check.rs"
        ]
    );
}

/// Two rows of a table with the same text, and one with a gap.
fn rows() -> [tables::Text; 3] {
    let text = |line, id: &str, english: &str| tables::Text {
        place: file::Place {
            file: "content/evidence/cautions.csv".to_owned(),
            line,
        },
        id: id.to_owned(),
        attribute: "sentence",
        english: english.to_owned(),
    };
    [
        text(2, "caution-a1", "Stop."),
        text(3, "caution-a2", "Stop."),
        text(4, "caution-a3", "Keep {people_out} away."),
    ]
}

const ROWS: &str = "\
caution-a1 =
    .sentence = Pare.
caution-a3 =
    .sentence = Quédese a { $people_out }.
";

fn said(words: &str) -> Result<Vec<tables::Said>, Problems> {
    let messages = file::read("content/words/es/tables/cautions.ftl", words)?;
    tables::said("content/words/es", &messages, &rows(), None)
}

#[test]
fn a_text_of_a_table_is_said_once_for_all_rows_that_have_it() {
    let said = said(ROWS).expect("nothing is damaged");
    let said: Vec<(&str, &str)> = said.iter().map(|(a, b)| (&**a, &**b)).collect();
    assert_eq!(
        said,
        [
            ("Keep {people_out} away.", "Quédese a {people_out}."),
            ("Stop.", "Pare."),
        ]
    );
}

#[test]
fn a_row_that_a_language_does_not_say_is_named_with_where_it_stands() {
    let stops =
        |words: &str, says: &str| assert_eq!(said(words).err(), Some(vec![says.to_owned()]));
    stops(
        &with(ROWS, "caution-a1 =\n    .sentence = Pare.\n", ""),
        "content/evidence/cautions.csv:2: no words for it in content/words/es/tables: caution-a1.sentence",
    );
    stops(
        &with(ROWS, " a { $people_out }", " lejos"),
        "content/words/es/tables/cautions.ftl:4: caution-a3.sentence: {people_out} of content/evidence/cautions.csv:4 is missing",
    );
    stops(
        &format!("{ROWS}caution-a9 =\n    .sentence = Pare.\n"),
        "content/words/es/tables/cautions.ftl:6: caution-a9.sentence says no text of a table",
    );
    stops(
        &format!("{ROWS}caution-a2 =\n    .sentence = Alto.\n"),
        "content/words/es/tables/cautions.ftl:6: caution-a2.sentence: the same text is said at content/words/es/tables/cautions.ftl:2",
    );
}

#[test]
fn what_a_page_links_to_and_quotes_is_the_same_in_every_language() {
    let read = |language: &str, text: &str| {
        let folder = format!("content/words/{language}");
        let messages = file::read(&format!("{folder}/pages/embed.ftl"), text)?;
        Ok(Language {
            name: language.to_owned(),
            messages,
            folder,
            tables: Vec::new(),
            names: Vec::new(),
        })
    };
    let english = "embed-a = **Ask** the [form](embed/build/) for `config`.\n";
    for (spanish, says) in [
        ("**Pida** `config` al [formulario](embed/build/).", ""),
        (
            "**Pida** `config` al [formulario](embed/).",
            "](embed/build/) is missing",
        ),
        (
            "**Pida** config al [formulario](embed/build/).",
            "`config` is missing",
        ),
        (
            "Pida `config` al [formulario](embed/build/).",
            "** is missing",
        ),
        (
            "**Pida** `config` y `más` al [formulario](embed/build/).",
            "`más` is not in it in en",
        ),
    ] {
        let all: Result<Vec<Language>, Problems> = [
            read("en", english),
            read("es", &format!("embed-a = {spanish}\n")),
        ]
        .into_iter()
        .collect();
        let said = all.and_then(|all| check::languages(all, &enums::all(), &[]));
        let said = said.err().unwrap_or_default();
        let expected = format!("content/words/es/pages/embed.ftl:1: embed-a: {says}");
        match says {
            "" => assert!(said.is_empty(), "{said:?}"),
            _ => assert_eq!(said, [expected]),
        }
    }
}
