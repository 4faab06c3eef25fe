//! The JavaScript call, and that it and the command line give the same numbers.

use crate::browser::in_browser;
use crate::site::{Server, answer_on_the_command_line};
use serde_json::{Value, json};

/// Questions of every kind of outcome, invented.
const QUESTIONS: &[&str] = &[
    r#"{"version":1,"units":"us","species":"Norway maple","stems":[{"diameter":"14 1/2 in","bark":"0.4 in"}],"setting":"woods","date":"2027-06-12","today":"2027-06-01","place":{"latitude":"42.36","longitude":"-71.06","elevation":"15 m"},"region":"US-MA","none_in_reach":true,"line_within_reach":"no"}"#,
    r#"{"version":1,"units":"metric","species":"Robinia pseudoacacia","stems":[{"girth":"88,5"},{"diameter":"12"}],"date":"2027-10-02","today":"2027-06-01","place":{"hemisphere":"north"},"none_in_reach":true,"line_within_reach":"no"}"#,
    r#"{"version":1,"units":"metric","species":"unknown conifer","stems":[{"diameter":"61"}],"date":"year","today":"2027-06-01","place":{"hemisphere":"south"},"targets":[{"kind":"road","distance":"12 m","slope":"20 %","downhill":true}],"line_within_reach":"cant_tell"}"#,
    r#"{"version":1,"species":"Quercus rubra","stems":[{"diameter":"20","live_share":"40 %"}],"date":"2027-05-20","today":"2027-05-01","region":"US-WI","height":"70 ft","targets":[{"kind":"building","distance":"30 ft"}],"signs":["cracks","conks"]}"#,
    r#"{"version":1,"species":"palm","stems":[{"diameter":"10"}],"date":"2027-05-20","today":"2027-05-01"}"#,
];

/// Equal after parsing, bit for bit: 120.0 and 120 are one number.
fn same(a: &Value, b: &Value) -> bool {
    match (a, b) {
        (Value::Number(a), Value::Number(b)) => {
            a.as_f64().map(f64::to_bits) == b.as_f64().map(f64::to_bits)
        }
        (Value::Array(a), Value::Array(b)) => {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| same(a, b))
        }
        (Value::Object(a), Value::Object(b)) => {
            a.len() == b.len()
                && a.iter()
                    .all(|(name, a)| b.get(name).is_some_and(|b| same(a, b)))
        }
        _ => a == b,
    }
}

/// The first place where two answers differ.
fn difference(path: &str, a: &Value, b: &Value) -> Option<String> {
    if same(a, b) {
        return None;
    }
    let inner = match (a, b) {
        (Value::Array(a), Value::Array(b)) => a
            .iter()
            .zip(b)
            .enumerate()
            .find_map(|(i, (a, b))| difference(&format!("{path}[{i}]"), a, b)),
        (Value::Object(a), Value::Object(b)) => a
            .iter()
            .find_map(|(name, a)| {
                difference(
                    &format!("{path}.{name}"),
                    a,
                    b.get(name).unwrap_or(&Value::Null),
                )
            })
            .or_else(|| {
                b.keys()
                    .find(|name| !a.contains_key(*name))
                    .map(|name| format!("{path}.{name} is only on one side"))
            }),
        _ => None,
    };
    inner.or_else(|| Some(format!("{path}: {a} and {b}")))
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn the_browser_and_the_command_line_give_the_same_answers_bit_for_bit() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&format!("{}method/", server.address)).await?;
        for question in QUESTIONS {
            let script = format!(
                "import('/v1/slipbark.js').then(({{ answer }}) => done(JSON.stringify(answer({question}))), (error) => done(String(error)));"
            );
            let answered = browser.run_until_done(&script).await?;
            let in_browser: Value = serde_json::from_str(answered.as_str().unwrap_or_default())
                .map_err(|error| format!("{question}: {error}: {answered}"))?;
            let on_command_line: Value =
                serde_json::from_str(&answer_on_the_command_line(question))?;
            assert!(
                in_browser.get("outcome").is_some(),
                "{question}: {in_browser}"
            );
            let differs = difference("answer", &on_command_line, &in_browser);
            assert_eq!(differs, None, "{question}");
        }
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_program_may_leave_out_the_search_for_changes() {
    let server = Server::of_the_site();
    let question = QUESTIONS[0];
    in_browser(async move |browser| {
        browser.open(&format!("{}method/", server.address)).await?;
        let script = format!(
            "import('/v1/slipbark.js').then(({{ answer }}) => {{
               const [plain, whole, quick] = [answer({question}), answer({question}, {{}}), answer({question}, {{ changes: false }})];
               const same = (one) => JSON.stringify({{ ...one, changes: null }});
               done([plain.changes.length > 0, whole.changes.length === plain.changes.length, quick.changes,
                     same(quick) === same(plain), answer({question}, {{ change: false }}).problems[0].field]);
             }}).catch((error) => done(String(error)));"
        );
        let seen = browser.run_until_done(&script).await?;
        assert_eq!(seen, json!([true, true, [], true, "options.change"]));
        browser.expect_quiet().await
    });
}

#[test]
#[ignore = "needs Chromium and chromedriver; tests/all runs it"]
fn a_bad_question_gives_its_problems_and_throws_nothing() {
    let server = Server::of_the_site();
    in_browser(async move |browser| {
        browser.open(&format!("{}method/", server.address)).await?;
        for (question, code) in [
            (
                "{ version: 1, species: 'nrway maple', stems: [{ diameter: '9 in' }], date: '2027-06-12' }",
                json!("unknown_species"),
            ),
            ("{ version: 1, spcies: 'x' }", json!("unknown_key")),
            ("{ stems: 3 }", json!("wrong_type")),
            ("null", json!("wrong_type")),
        ] {
            let script = format!(
                "import('/v1/slipbark.js').then(({{ answer }}) => done(answer({question})), (error) => done(String(error)));"
            );
            let answered = browser.run_until_done(&script).await?;
            let first = &answered["problems"][0];
            assert_eq!(first["code"], code, "{question}: {answered}");
            assert!(
                first["message"]
                    .as_str()
                    .is_some_and(|message| !message.is_empty()),
                "{answered}"
            );
        }
        browser.expect_quiet().await
    });
}
