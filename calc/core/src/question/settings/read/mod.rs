//! Reads a group's settings: everything that is wrong at once, each with its place.

mod fields;
mod species;

use self::fields::{Fields, NAME, TEXT, is_phone};
use super::{
    CodeTopic, Contact, ContactKind, GroupCrew, LARGEST, LocalCode, Settings, SettingsFault, Told,
    Value,
};
use crate::question::{PlaceTyped, Text, problems_of_place, region_code};
use crate::reference::Reference;
use crate::terms::quantity::{Range, Units};

/// The keys of each object, by its path; lists carry `[]`.
pub const KEYS: [(&str, &[&str]); 7] = [
    (
        "",
        &[
            "$schema", "schema", "id", "name", "checked", "units", "region", "place", "species",
            "contacts", "codes", "tighten", "crew", "share",
        ],
    ),
    (
        "place",
        &["latitude", "longitude", "elevation", "hemisphere"],
    ),
    (
        "species",
        &["first", "only", "aliases", "notes", "list", "csv"],
    ),
    ("contacts[]", &["kind", "name", "phone", "url", "checked"]),
    ("codes[]", &["topic", "text", "url", "authority", "checked"]),
    (
        "tighten",
        &[
            "min_distance_factor",
            "max_size_for_volunteers_cm",
            "months_blocked",
        ],
    ),
    ("crew", &["size", "hours_per_day"]),
];

/// The largest factor that still means something.
const FACTOR: Range = Range {
    low: 1.0,
    high: 10.0,
};
const SIZE_CM: Range = Range {
    low: 1.0,
    high: 500.0,
};
const MONTH: Range = Range {
    low: 1.0,
    high: 12.0,
};
const PEOPLE: Range = Range {
    low: 1.0,
    high: 200.0,
};
const HOURS: Range = Range {
    low: 0.5,
    high: 24.0,
};

/// Reads settings. `list` is the text of the table that `species.list` names, where it is at hand.
///
/// # Errors
/// All that was told, where some of it refuses the settings.
pub fn read(
    reference: &'static Reference,
    value: &Value,
    list: Option<&str>,
) -> Result<(Settings, Vec<Told>), Vec<Told>> {
    if value.weight() + list.map_or(0, str::len) > LARGEST {
        return Err(vec![Told::too_large()]);
    }
    let mut reader = Reader {
        reference,
        told: Vec::new(),
    };
    let settings = reader.settings(value, list);
    if reader.told.iter().any(Told::refuses) {
        Err(reader.told)
    } else {
        Ok((settings, reader.told))
    }
}

struct Reader {
    reference: &'static Reference,
    told: Vec<Told>,
}

impl Reader {
    fn settings(&mut self, value: &Value, list: Option<&str>) -> Settings {
        let mut settings = Settings::default();
        let Some(top) = self.map(value, "", "") else {
            return settings;
        };
        match top.get("schema") {
            Some(Value::Number(1.0)) => {}
            Some(_) => self.tell("schema", SettingsFault::Version),
            None => self.tell("schema", SettingsFault::Missing),
        }
        settings.id = self.text(&top, "id", NAME).unwrap_or_default();
        settings.name = self.needed(&top, "name", NAME);
        settings.checked = self.day(&top, "checked");
        settings.units = match self.word(&top, "units", &["us", "metric", "both"]) {
            Some(0) => Some(Units::Us),
            Some(1) => Some(Units::Metric),
            _ => None,
        };
        self.place(&top, &mut settings);
        settings.species = self.species(&top, list);
        for fields in self.each(&top, "contacts") {
            settings.contacts.extend(self.contact(&fields));
        }
        for fields in self.each(&top, "codes") {
            settings.codes.extend(self.code(&fields));
        }
        if let Some(fields) = self.object(&top, "tighten") {
            self.tighten(&fields, &mut settings);
        }
        if let Some(fields) = self.object(&top, "crew") {
            let size = self.number(&fields, "size", PEOPLE);
            let hours = self.number(&fields, "hours_per_day", HOURS);
            for key in ["size", "hours_per_day"] {
                self.need(&fields, key);
            }
            settings.crew = size
                .zip(hours)
                .map(|(size, hours)| GroupCrew { size, hours });
        }
        let share = self.word(&top, "share", &["none", "fragment"]);
        settings.share = share.map(|at| at == 1);
        settings
    }

    fn contact(&mut self, fields: &Fields<'_>) -> Option<Contact> {
        self.need(fields, "kind");
        let kind = self.word(fields, "kind", ContactKind::WORDS);
        let name = self.needed(fields, "name", NAME);
        let phone = self.text(fields, "phone", 40);
        if phone.as_ref().is_some_and(|phone| !is_phone(phone)) {
            self.tell(&fields.at("phone"), SettingsFault::Phone);
        }
        let url = self.link(fields, "url");
        if fields.get("phone").is_none() && fields.get("url").is_none() {
            self.tell(&fields.path, SettingsFault::NoWay);
        }
        let checked = self.checked(fields);
        Some(Contact {
            kind: *ContactKind::ALL.get(kind?)?,
            name,
            phone,
            url,
            checked,
        })
    }

    fn code(&mut self, fields: &Fields<'_>) -> Option<LocalCode> {
        self.need(fields, "topic");
        let topic = self.word(fields, "topic", CodeTopic::WORDS);
        let text = self.needed(fields, "text", TEXT);
        let authority = self.needed(fields, "authority", NAME);
        let url = self.link(fields, "url");
        let checked = self.checked(fields);
        Some(LocalCode {
            topic: *CodeTopic::ALL.get(topic?)?,
            text,
            authority,
            url,
            checked,
        })
    }

    /// Only what makes advice more cautious; the rest is refused with its reason.
    fn tighten(&mut self, fields: &Fields<'_>, settings: &mut Settings) {
        let key = "min_distance_factor";
        let tighten = &mut settings.tighten;
        match fields.get(key) {
            Some(Value::Number(factor)) if *factor < FACTOR.low => {
                self.tell(&fields.at(key), SettingsFault::Loosens);
            }
            _ => {
                if let Some(factor) = self.number(fields, key, FACTOR) {
                    tighten.distance_factor = factor;
                }
            }
        }
        let most = self.number(fields, "max_size_for_volunteers_cm", SIZE_CM);
        tighten.volunteers_mm = most.map(|cm| cm * 10.0);
        for (path, value) in self.list(fields, "months_blocked") {
            if let Some(month) = self.in_range(value, &path, MONTH) {
                if libm::floor(month) == month {
                    tighten.months |= 1 << (month as u16 - 1);
                } else {
                    self.tell(&path, SettingsFault::OutOfRange(MONTH));
                }
            }
        }
    }

    /// Place and region are read as those of a question.
    fn place(&mut self, top: &Fields<'_>, settings: &mut Settings) {
        let typed = |fields: &Fields<'_>, key: &str| match fields.get(key)? {
            Value::Text(text) => Some(Text(text.clone())),
            Value::Number(number) => Some(Text::of_number(*number)),
            // A word that no field takes, so that its place is told.
            _ => Some(Text::from("?")),
        };
        settings.region = typed(top, "region");
        if let Some(fields) = self.object(top, "place") {
            settings.place = Some(PlaceTyped {
                latitude: typed(&fields, "latitude"),
                longitude: typed(&fields, "longitude"),
                elevation: typed(&fields, "elevation"),
                hemisphere: typed(&fields, "hemisphere"),
            });
        }
        let units = settings.units.unwrap_or(Units::Us);
        for problem in problems_of_place(units, settings.place.as_ref(), &settings.region) {
            let path = problem.field.clone();
            self.tell(&path, SettingsFault::Field(problem));
        }
        // A name is kept as its code, which the form's list knows.
        if let Some(text) = &mut settings.region
            && let Some(code) = region_code(text.trimmed())
        {
            *text = Text::from(code);
        }
    }
}
