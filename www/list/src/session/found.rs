//! What was found at visits: a second file beside the list, taken up once the trees were judged.

use super::{Session, Work};
use calc::terms::small::order::sort_by_key;
use calc_list::found::{FoundFile, FoundProblem};
use calc_view::plan::after::{AfterWork, TakingUp};
use calc_view::plan::after_sentences::no_file;
use calc_view::plan::screen::found::FoundShown;
use calc_view::words::m;

/// A table of visits as it was opened.
#[derive(Clone)]
pub(crate) struct FoundTable {
    pub(crate) name: String,
    pub(crate) bytes: Vec<u8>,
    /// Whether the plan is made with the crew's own rate.
    pub(crate) own_rate: bool,
}

/// What a table of visits comes to.
pub(super) struct FoundTold {
    after: AfterWork,
    /// By row.
    problems: Vec<FoundProblem>,
}

/// A table of visits that is being taken up.
pub(super) struct FoundWork {
    taking: TakingUp,
    file: FoundFile,
}

impl Session {
    /// Opens a table of visits beside the list. False where it is none: what was there stays.
    pub(crate) fn open_found(&mut self, name: &str, bytes: Vec<u8>) -> bool {
        let wrong = match FoundFile::of(&bytes, self.options.units) {
            Ok(Ok(_)) => None,
            Ok(Err(why)) => Some(no_file(why)),
            // Bytes in memory are always there to be read.
            Err(_) => Some(String::new()),
        };
        if let Some(wrong) = wrong {
            self.no_found = Some([name, ": ", &wrong].concat());
            self.told.said.clone_from(&wrong);
            self.told.to = "l-found-wrong";
            self.draw();
            return false;
        }
        self.take_found(name, bytes)
    }

    /// Takes a table of visits, which was looked at, beside the list. False where there is no list.
    pub(super) fn take_found(&mut self, name: &str, bytes: Vec<u8>) -> bool {
        if self.bytes.is_empty() {
            self.told.said = m::PROPERTY_FOUND_LIST_FIRST.into();
            return false;
        }
        self.found = Some(FoundTable {
            name: name.to_owned(),
            bytes,
            own_rate: false,
        });
        self.plan_with_found();
        true
    }

    /// Whether bytes are a table of visits: then they are no list.
    pub(super) fn is_found(&self, bytes: &[u8]) -> bool {
        matches!(FoundFile::of(bytes, self.options.units), Ok(Ok(_)))
    }

    /// Plans anew with the table of visits as it is now, where there is a plan; else it waits for one.
    pub(super) fn plan_with_found(&mut self) {
        self.no_found = None;
        self.told.to = "l-found";
        if self.season.is_none() {
            self.told.to = "";
            if let Some(found) = &self.found {
                self.told.said = m::property_found_waits(found.name.as_str());
            }
        } else if self.unread {
            self.read_anew();
        } else {
            self.judge_for(Work::Judging);
        }
    }

    /// The work behind the judging of all trees: the table of visits is taken up, or the plan is made.
    pub(super) fn after_judging(&mut self) -> Work {
        self.found_told = None;
        let (Some(found), Some(list), Some(season)) = (&self.found, &self.list, &self.season)
        else {
            return Work::Planning(Box::default());
        };
        match FoundFile::of(&found.bytes, self.options.units) {
            Ok(Ok(mut file)) => Work::TakingUp(Box::new(FoundWork {
                taking: TakingUp::begin(list, &season.asked, &mut file),
                file,
            })),
            _ => Work::Planning(Box::default()),
        }
    }

    /// Takes up so many trees more, and tells how many of how many were. Behind the last one trees are judged anew where
    /// the crew's own rate counts, else the plan is made.
    pub(super) fn take_up(&mut self, trees: usize, mut work: Box<FoundWork>) -> (usize, usize) {
        let (Some(list), Some(season)) = (&mut self.list, &mut self.season) else {
            return (0, 0);
        };
        let asked = &mut season.asked;
        if work.taking.step(trees, list, asked, &mut work.file) {
            let told = work.taking.taken_up();
            self.work = Work::TakingUp(work);
            return told;
        }
        let FoundWork { taking, mut file } = *work;
        let after = taking.done(list, asked);
        sort_by_key(&mut file.problems, |problem| problem.row);
        self.work = Work::Planning(Box::default());
        if let Some(found) = self.found.as_mut().filter(|found| found.own_rate)
            && asked.said.rate.is_none()
        {
            asked.said.rate = after.timed.and_then(|timed| timed.rate.ok());
            if asked.said.rate.is_some() {
                list.judge_anew();
                self.work = Work::Judging;
            } else {
                found.own_rate = false;
            }
        }
        self.found_told = Some(FoundTold {
            after,
            problems: file.problems,
        });
        (0, 0)
    }

    /// Trees are judged at the usual rate until what was found tells the crew's own.
    pub(super) fn without_own_rate(&mut self) {
        if let Some(season) = &mut self.season {
            season.asked.said.rate = None;
        }
    }

    /// Puts what was found into the plan that was made.
    pub(super) fn found_into_plan(&mut self) {
        self.planned_with.clone_from(&self.found);
        if let (Some(made), Some(told), Some(found)) =
            (&mut self.made, &self.found_told, &self.found)
        {
            made.file.after = Some(told.after.file(found.own_rate));
        }
    }

    pub(super) fn found_shown(&self) -> Option<FoundShown<'_>> {
        let (found, told) = (self.found.as_ref()?, self.found_told.as_ref()?);
        Some(FoundShown {
            name: &found.name,
            after: &told.after,
            problems: &told.problems,
            own_rate: found.own_rate,
        })
    }

    /// What was found, where a plan has it.
    pub(super) fn after(&self) -> Option<&AfterWork> {
        self.found_told.as_ref().map(|told| &told.after)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use calc_list::found::COLUMNS;
    use serde_json::{Value, json};
    use std::collections::BTreeMap;

    /// The sample property, planned three years after its first season.
    fn planned() -> Session {
        let places = calc_data::places::places();
        let mut session = Session::new("en", "2030-03-01", "us", places);
        let sample = include_bytes!("../../../../content/sample/trees.csv");
        assert!(session.open("trees.csv", sample.to_vec()));
        done(&mut session);
        let days = ["2030-05-11", "2030-05-18", "2030-05-25", "2030-06-01"];
        let mut entries = vec![["people", "4"], ["hours", "3"]];
        entries.extend(days.map(|day| ["days", day]));
        act(&mut session, json!({ "do": "plan", "entries": entries }));
        session
    }

    /// Works until all is done, and gives what is told then.
    fn done(session: &mut Session) -> Value {
        loop {
            let told: Value = serde_json::from_str(&session.step(40)).expect("JSON");
            if told["more"] == false {
                return told;
            }
        }
    }

    fn act(session: &mut Session, asked: Value) -> Value {
        session.act(&asked.to_string());
        done(session)
    }

    fn plan(session: &mut Session) -> Value {
        serde_json::from_slice(&session.file("plan.json")).expect("a plan")
    }

    /// Tags of the planned trees of the species and place that most of them have.
    fn tags(plan: &Value) -> Vec<String> {
        let mut classes: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for tree in plan["trees"].as_array().expect("trees") {
            if tree["reason"] == "planned" {
                let tag = tree["tree_id"].as_str().expect("a tag").to_owned();
                let of = classes.entry(tree["class"].to_string()).or_default();
                of.push(tag);
            }
        }
        let most = classes.into_values().max_by_key(Vec::len);
        most.unwrap_or_default()
    }

    fn reason(plan: &Value, tag: &str) -> String {
        let mut trees = plan["trees"].as_array().expect("trees").iter();
        let tree = trees.find(|tree| tree["tree_id"] == tag).expect(tag);
        tree["reason"].as_str().expect("a reason").to_owned()
    }

    #[test]
    fn a_table_of_visits_moves_the_plan_on_and_comes_back_with_the_draft() {
        let mut session = planned();
        let before = plan(&mut session);
        let tags = tags(&before);
        assert!(tags.len() > 5, "{}", tags.len());
        // What is no such table replaces nothing, and is told.
        assert!(!session.open_found("half.csv", b"tree_id,found\nHB-001,dead\n".to_vec()));
        let told = done(&mut session);
        assert_eq!(told["to"], "l-found-wrong");
        assert!(told["areas"]["folds"].to_string().contains("visited_on"));
        assert_eq!(plan(&mut session), before);

        let header = COLUMNS.join(",");
        let mut text = format!("{header}\n");
        for tag in &tags[..5] {
            text += &format!("{tag},2027-05-15,,24,1,2027-05-15,,\n");
        }
        text += &format!("{},2029-07-20,Crown bare,,,,,\n", tags[0]);
        text += &format!("{},2029-07-20,crown_full,,,,,\n", tags[1]);
        text += &format!("{},2029-07-20,withered,,,,,\n", tags[2]);
        // A table of visits is none of trees, wherever it was opened.
        assert!(!session.open("found.csv", text.clone().into_bytes()));
        let told = done(&mut session);
        let folds = told["areas"]["folds"].to_string();
        assert!(folds.contains("Row 9, column C"), "{folds}");
        assert!(folds.contains("found.csv: 2 visits"), "{folds}");
        let now = plan(&mut session);
        for (tag, what) in [(0, "dead"), (1, "planned"), (2, "done"), (4, "done")] {
            assert_eq!(reason(&now, &tags[tag]), what, "{tag}");
        }
        assert_eq!(now["after"]["rate"]["used"], false);
        assert!(
            session
                .command(&session.season.as_ref().expect("a season").asked)
                .contains("--found \"found.csv\"")
        );

        let own = json!({ "do": "own-rate", "entries": [["own-rate", "yes"]] });
        act(&mut session, own);
        let own = plan(&mut session);
        assert_eq!(own["after"]["rate"]["used"], true);
        assert_eq!(own["after"]["found"], now["after"]["found"]);
        let minutes = |plan: &Value| {
            let mut trees = plan["trees"].as_array().expect("trees").iter();
            let tree = trees.find(|tree| tree["tree_id"] == tags[1]);
            tree.expect("a tree")["work"][0].as_f64().expect("minutes")
        };
        assert_ne!(minutes(&own), minutes(&now), "the crew's own rate");

        // A reload brings it back.
        let mut again = Session::new("en", "2030-03-01", "us", session.places);
        again.restore("trees.csv", session.bytes.clone(), &session.draft());
        done(&mut again);
        assert_eq!(plan(&mut again)["after"], own["after"]);
        // Left out, the plan is as it was before.
        act(&mut again, json!({ "do": "found-out" }));
        let without = plan(&mut again);
        assert!(without.get("after").is_none());
        assert_eq!(reason(&without, &tags[0]), "planned");
    }

    #[test]
    fn an_empty_table_has_the_header_and_the_tags_of_the_plan() {
        let mut session = planned();
        let tags = tags(&plan(&mut session));
        let bytes = session.file("found.csv");
        let text = String::from_utf8(bytes.clone()).expect("text");
        assert!(text.contains(&COLUMNS.join(",")));
        assert!(
            tags.iter()
                .all(|tag| text.contains(&format!("{tag},,,,,,,planned for 2030-")))
        );
        // Opened as it is, each of its rows is told to be filled in, and none counts.
        let file = FoundFile::of(&bytes, session.options.units)
            .expect("bytes")
            .expect("a table");
        assert!(file.rows.is_empty() && file.problems.len() >= 2 * tags.len());
    }

    #[test]
    fn land_of_a_part_is_told_beside_its_field_where_it_is_none_and_keeps_a_floor() {
        let mut session = planned();
        let free = plan(&mut session);
        let units = session.list.as_ref().expect("a list").units();
        let at = units
            .iter()
            .position(|unit| *unit == "Oak wood")
            .expect("a part");
        let fields = |area: &str, crowns: &str, floor: &str| {
            let entries = json!([
                [format!("land-area-{at}"), area],
                [format!("land-crowns-{at}"), crowns],
                ["land-floor", floor]
            ]);
            json!({ "do": "land", "entries": entries })
        };
        for (asked, field) in [
            (fields("12 miles", "", ""), "land-area"),
            (fields("", "70%", ""), "land-area"),
            (fields("1500 m2", "0", ""), "land-crowns"),
            (fields("1500 m2", "70%", "120"), "land-floor"),
            (fields("", "", "60"), "land-floor"),
        ] {
            let told = act(&mut session, asked);
            assert_eq!(told["to"], "l-land-wrong");
            let folds = told["areas"]["folds"].as_array().expect("texts").clone();
            let invalid = folds
                .iter()
                .position(|it| it == "=aria-invalid")
                .expect("a field");
            let id = folds[..invalid]
                .iter()
                .rposition(|it| it == "=id")
                .expect("an id");
            assert!(
                folds[id + 1].as_str().expect("an id").starts_with(field),
                "{field}"
            );
            assert_eq!(plan(&mut session), free, "nothing was planned");
        }
        act(&mut session, fields("1500 m2", "70%", "60"));
        let floor = plan(&mut session);
        let count = |plan: &Value, of: &str| plan["counts"][of].as_u64().expect("a count");
        assert!(count(&floor, "planned") < count(&free, "planned"));
        let units = floor["units"].as_array().expect("units");
        let unit = units
            .iter()
            .find(|unit| unit["unit"] == "Oak wood")
            .expect("the part");
        assert_eq!(
            (&unit["floor_share"], &unit["land"]["area_m2"]),
            (&json!(0.6), &json!(1500.0))
        );
        let mut again = Session::new("en", "2030-03-01", "us", session.places);
        again.restore("trees.csv", session.bytes.clone(), &session.draft());
        done(&mut again);
        assert_eq!(plan(&mut again)["units"], floor["units"]);
    }
}
