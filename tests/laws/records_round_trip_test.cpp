// Records written out and read back are the same records: bit for bit, byte for byte, whatever their texts hold.
#include "demo_facility/demo_facility.h"
#include "records/parse_records.h"
#include "records/write_records.h"
#include "store/store.h"

#include <doctest/doctest.h>

#include <fstream>
#include <random>

using namespace amentum;

namespace {

const Date today = *parse_date("2026-03-14", "today");

std::string file_text(const std::string& path) {
    std::ifstream file(AMENTUM_SOURCE_DIR "/" + path, std::ios::binary);
    REQUIRE(file);
    return {std::istreambuf_iterator<char>(file), {}};
}

const ReferenceTables& catalogue() {
    static const ReferenceTables tables = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names())
            texts[name] = file_text("data/" + name);
        auto parsed = parse_reference_tables(texts);
        REQUIRE(parsed);
        return *std::move(parsed);
    }();
    return tables;
}

// Takes the text as a coach's file; says how many records were new.
int take(Store& store, RecordKind kind, const std::string& text, Date day = today) {
    const RecordSet held = store.load_all();
    const auto preview = parse_records(kind, text, {catalogue(), held, day});
    for (const auto& refusal : preview.file_refusals)
        FAIL(word(kind), ": ", refusal.sentence);
    for (const auto& line : preview.lines)
        if (line.refusal)
            FAIL(word(kind), ": ", line.refusal->sentence);
    store.save_records(preview.new_records);
    return preview.count(Verdict::added);
}

void check_round_trip(const RecordSet& records, Date day = today) {
    Store first(":memory:");
    first.save_records(records);
    const auto files = write_records(first.load_all());
    Store second(":memory:");
    for (const auto& file : files)
        take(second, *from_word<RecordKind>(file.name.substr(0, file.name.rfind('.'))), file.text, day);
    CHECK(second.load_all() == first.load_all());
    const auto again = write_records(second.load_all());
    REQUIRE(again.size() == files.size());
    for (std::size_t i = 0; i < files.size(); ++i) {
        CHECK(again[i].name == files[i].name);
        CHECK(again[i].text == files[i].text);
        const auto kind = *from_word<RecordKind>(files[i].name.substr(0, files[i].name.rfind('.')));
        CHECK(take(second, kind, files[i].text, day) == 0);
    }
    CHECK(second.load_all() == first.load_all());
}

// Records at random, as far as they can be: every double has all of its bits in use, every text is awkward.
class RandomGym {
public:
    explicit RandomGym(std::uint64_t seed) : random_(seed) {}

    RecordSet records() {
        RecordSet set;
        set.facility = Facility{name(), pick<MassUnit>(), pick<SpeedUnit>(), pick<LengthUnit>(),
                                maybe() ? "America/Halifax" : ""};
        for (int i = whole(1, 3); i > 0; --i)
            set.kits.push_back(kit());
        for (int i = whole(1, 4); i > 0; --i)
            set.athletes.push_back(athlete(set));
        for (const auto& each : set.athletes)
            add_work(set, each);
        for (int i = whole(0, 5); i > 0; --i)
            set.prior_edits.push_back(prior_edit(static_cast<int>(set.prior_edits.size()) + 1));
        for (int i = whole(0, 4); i > 0; --i)
            set.pitch_tables.push_back(pitch_table(static_cast<int>(set.pitch_tables.size()) + 1));
        for (const auto& each : set.athletes)
            add_arm_care(set, each);
        return set;
    }

private:
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random_);
    }
    bool maybe() { return whole(0, 1) == 1; }
    template <class E>
    E pick() {
        return words_of<E>[static_cast<std::size_t>(whole(0, static_cast<int>(words_of<E>.size()) - 1))]
            .first;
    }
    template <class T>
    const T& one_of(const std::vector<T>& all) {
        return all[static_cast<std::size_t>(whole(0, static_cast<int>(all.size()) - 1))];
    }
    template <class Q>
    std::optional<Q> perhaps(Q (*make)(double), double low, double high) {
        const double x = real(low, high);
        return maybe() ? std::optional(make(x)) : std::nullopt;
    }
    std::optional<double> perhaps(double low, double high) {
        const double x = real(low, high);
        return maybe() ? std::optional(x) : std::nullopt;
    }

    std::string letters(int count, bool line_breaks) {
        static const std::vector<std::string> pool{"a",  "Z", "7", " ",  ",", ";",  "\"",   "\"\"",
                                                   "'",  "#", "=", "\t", "é", "ß",  "日",   "🥎",
                                                   "\\", "/", "|", ".",  "-", "\n", "\r\n", "\r"};
        std::string text;
        for (; count > 0; --count)
            text += pool[static_cast<std::size_t>(whole(0, line_breaks ? 23 : 20))];
        return text;
    }
    std::string free_text() { return letters(whole(0, 12), true); } // kept to the last blank
    std::string name() { return "N" + std::to_string(++named_) + letters(whole(0, 8), false) + "x"; }
    std::string tidy_text() { return maybe() ? "" : name(); }
    Date past() { return today - whole(0, 2000); }

    PriorEdit prior_edit(int number) {
        const auto kind = pick<PriorKind>();
        const std::string quality = kind == PriorKind::slope ? one_of(catalogue().velocity_priors).quality
                                                             : one_of(catalogue().attainable_changes).quality;
        const PriorBelief belief{kind == PriorKind::slope ? real(-1, 1) : real(0, 2), real(0.01, 1)};
        return {number,
                kind,
                quality,
                maybe() ? std::optional(belief) : std::nullopt,
                name(),
                past(),
                "reason enough " + free_text()};
    }

    Kit kit() {
        const std::string called = name();
        Kit kit{{slug(called)}, called, pick<MassUnit>(), {}};
        for (int i = whole(0, 6); i > 0; --i) {
            kit.items.push_back({pick<ItemKind>(), name(), whole(1, 500), Mass::kilograms(real(0.02, 500)),
                                 perhaps(Length::metres, 0, 3), perhaps(0.05, 10),
                                 Mass::kilograms(real(0.05, 100)), Mass::kilograms(real(0.5, 1000))});
        }
        return kit;
    }

    Athlete athlete(const RecordSet& set) {
        const std::string called = name();
        Athlete a{{slug(called)},
                  called,
                  today - whole(3000, 20000),
                  pick<Sex>(),
                  pick<Hand>(),
                  pick<Sport>(),
                  pick<Role>(),
                  pick<Level>(),
                  perhaps(Length::metres, 1, 2.4),
                  perhaps(Length::metres, 0.5, 1.3),
                  perhaps(0, 40),
                  {},
                  one_of(set.kits).id,
                  tidy_text()};
        for (int i = whole(0, 2); i > 0; --i)
            a.restrictions.push_back(one_of(catalogue().cautions).key);
        return a;
    }

    void fill(Reading& r, const TestKind& kind) {
        switch (kind.measure) {
        case Measure::one_rep_max:
        case Measure::split_squat_max:
        case Measure::system_mass_max:
            r.load = Mass::kilograms(real(10, 80));
            r.reps = whole(1, 10);
            r.reps_in_reserve = perhaps(0, 0.9);
            r.body_mass = Mass::kilograms(real(40, 110));
            break;
        case Measure::ball_speed:
            r.speed = Speed::metres_per_second(real(4, 12));
            break;
        case Measure::jump_height:
            r.flight_time = Duration::seconds(real(0.3, 0.7));
            break;
        case Measure::bound_distance:
            r.distance = Length::metres(real(0.5, 3));
            break;
        case Measure::joint_angle:
            r.angle = Angle::degrees(real(kind.plausible_low, kind.plausible_high));
            break;
        case Measure::isometric_force:
            r.force = Force::newtons(real(205, 390));
            break;
        case Measure::jump_power:
            r.power = Power::watts(real(900, 6000));
            break;
        case Measure::reactive_ratio:
            r.flight_time = Duration::seconds(real(0.3, 0.6));
            r.contact_time = Duration::seconds(real(0.15, 0.35));
            break;
        case Measure::take_off_speed:
            r.speed = Speed::metres_per_second(real(1, 4));
            break;
        case Measure::session_velocity:
            r.speed = Speed::metres_per_second(real(15, 40));
            break;
        case Measure::body_mass:
            r.body_mass = Mass::kilograms(real(40, 150));
            break;
        case Measure::stature:
            r.height = Length::metres(real(1.2, 2));
            break;
        case Measure::taped_length:
            r.height = Length::metres(real(kind.plausible_low, kind.plausible_high));
            break;
        }
    }

    void add_test_day(RecordSet& set, const Athlete& a, Date date) {
        const TestKind& kind = one_of(catalogue().test_kinds);
        const std::string device = tidy_text(), rater = tidy_text();
        const auto place = pick<PlaceMeasured>();
        const Side side = maybe() ? Side::left : Side::right;
        for (int trial = 1; trial <= 3; ++trial) {
            Reading r{a.id, date, kind.key, side, trial};
            fill(r, kind);
            r.device = device;
            r.rater = rater;
            r.place = place;
            r.note = free_text();
            set.readings.push_back(r);
        }
    }

    Block block(const RecordSet& set, const Athlete& a) {
        const Date start = today + whole(-300, 100);
        Block b{{a.id.text + "-" + start.text()},
                a.id,
                one_of(set.kits).id,
                start,
                whole(4, 16),
                whole(1, 5),
                real(20, 120),
                {},
                {},
                free_text()};
        for (int i = whole(0, 3); i > 0; --i)
            b.notes.push_back("note " + letters(5, false));
        for (int order = 1; order <= 6; ++order) {
            const int week = whole(1, b.weeks);
            BlockLine line{week,
                           whole(1, 5),
                           start + 7 * (week - 1),
                           order,
                           one_of(catalogue().exercises).key,
                           pick<Part>(),
                           whole(1, 8),
                           whole(1, 20),
                           perhaps(0.3, 1),
                           perhaps(0, 5),
                           perhaps(Mass::kilograms, -40, 300),
                           free_text(),
                           real(0, 6),
                           one_of(catalogue().qualities).key,
                           free_text(),
                           {}};
            if (maybe())
                line.overridden.push_back(one_of(catalogue().cautions).key);
            b.lines.push_back(line);
        }
        return b;
    }

    // A day of throws of several settings and occasions, or a day known to be without.
    void add_throws(RecordSet& set, const Athlete& a, Date date) {
        if (maybe()) {
            set.throws.push_back({a.id,
                                  date,
                                  ThrowSetting::none,
                                  0,
                                  {},
                                  {},
                                  {},
                                  {},
                                  perhaps(0, 10),
                                  {},
                                  perhaps(0, 10),
                                  free_text()});
            return;
        }
        for (int occasion = whole(1, 3); occasion > 0; --occasion) {
            auto setting = pick<ThrowSetting>();
            if (setting == ThrowSetting::none)
                setting = ThrowSetting::game;
            ThrowEntry t{a.id,
                         date,
                         setting,
                         whole(1, 400),
                         perhaps(0.1, 1),
                         perhaps(Speed::metres_per_second, 5, 45),
                         perhaps(Length::metres, 1, 100),
                         perhaps(Mass::kilograms, 0.1, 3),
                         perhaps(0, 10),
                         perhaps(0, 10),
                         perhaps(0, 10),
                         free_text(),
                         occasion,
                         tidy_text(),
                         tidy_text(),
                         {},
                         {},
                         {},
                         free_text(),
                         tidy_text()};
            if (setting == ThrowSetting::game) {
                t.outs = perhaps_whole(0, 60);
                t.before_last_batter = perhaps_whole(0, t.count);
            }
            if (setting == ThrowSetting::fielding) {
                t.outs_caught = whole(0, 60);
                t.count = whole(0, 1) * t.count;
            }
            set.throws.push_back(t);
        }
    }

    std::optional<int> perhaps_whole(int low, int high) {
        const int x = whole(low, high);
        return maybe() ? std::optional(x) : std::nullopt;
    }

    // Bands of ages without a hole, bands of rest rising to the daily maximum; or no rows at all.
    PitchTable pitch_table(int number) {
        PitchTable table{number, {}, name(), pick<Sport>(), name(), past(), "reason enough " + free_text()};
        const int year = whole(2000, 2030);
        int age = whole(7, 9);
        const auto month = perhaps_whole(1, 12); // one for the table
        for (int i = whole(0, 3); i > 0; --i) {
            const int low = age, most = whole(60, 120);
            age += whole(1, 4);
            PitchRule r{table.organisation, year, table.sport, low, age - 1, most, {}, {}, {}, {}, {},
                        free_text(),        {}};
            if (maybe())
                r.rest_to = {20, 35, 50, most, {}, {}};
            r.game_max = perhaps_whole(1, most);
            r.third_day_max = perhaps_whole(0, most);
            r.most_days_running = perhaps_whole(1, 7);
            r.yearly_innings = perhaps_whole(1, 400);
            for (int j = whole(0, 2); j > 0; --j)
                r.sources.push_back("source; " + letters(5, false) + "x");
            r.age_month = month;
            if (month)
                r.age_day = 28;
            r.second_game = pick<SecondGame>();
            r.last_batter = pick<LastBatter>();
            r.no_catching_from = perhaps_whole(1, most);
            r.no_pitching_caught = perhaps_whole(1, 20);
            r.months_off = perhaps_whole(4, 12);
            if (r.months_off)
                r.months_off_running = perhaps_whole(0, 4);
            r.months_off_from = whole(0, 1) ? MonthsOffFrom::throwing : MonthsOffFrom::pitching;
            table.rules.push_back(r);
        }
        return table;
    }

    void add_arm_care(RecordSet& set, const Athlete& a) {
        for (int i = whole(0, 2); i > 0; --i) {
            const Date first = today + whole(-500, 100);
            const bool own = maybe() && !set.pitch_tables.empty();
            set.teams.push_back({a.id, name(),
                                 maybe() ? (own ? one_of(set.pitch_tables).organisation
                                                : one_of(catalogue().pitch_rules).organisation)
                                         : "",
                                 first, maybe() ? std::optional(first + whole(0, 300)) : std::nullopt});
        }
        for (int number = 1, last = whole(0, 3); number <= last; ++number) {
            const Date felt = past();
            set.pains.push_back({a.id, number, felt, pick<PainRegion>(),
                                 maybe() ? one_of(catalogue().stop_signs).key : "", free_text(), name()});
            if (maybe())
                set.clearances.push_back({a.id, number, felt, name(), name(), today, free_text()});
            set.throw_steps.push_back(steps(a, number));
            set.stops_answered.push_back(
                {a.id, name(), past(), "reason enough " + free_text(), name(), today - whole(0, 9)});
        }
    }

    ThrowSteps steps(const Athlete& a, int number) {
        ThrowSteps s{a.id,        number, pick<StepsOrigin>(), name(), today + whole(-9, 9),
                     whole(0, 6), {},     free_text(),         name(), past()};
        for (int i = whole(0, 5); i > 0; --i)
            s.steps.push_back({whole(1, 400), perhaps(Length::metres, 1, 100), perhaps(0.1, 1), free_text()});
        return s;
    }

    void add_work(RecordSet& set, const Athlete& a) {
        for (int i = 0; i < 4; ++i) {
            const Date date = today - (i * 300 + whole(0, 299));
            add_test_day(set, a, date);
            add_throws(set, a, date);
            const Date first = today + (i * 40 - 60);
            set.calendar.push_back({a.id, first, first + whole(0, 30), pick<DayKind>(), free_text()});
            set.sets.push_back(
                {"set-" + std::to_string(100000 + ++named_), a.id, date, one_of(catalogue().exercises).key,
                 whole(1, 40), perhaps(Mass::kilograms, -50, 400),
                 maybe() ? std::optional(whole(1, 100)) : std::nullopt, perhaps(0, 20),
                 perhaps(Speed::metres_per_second, 1, 45),
                 maybe() ? std::optional(BlockId{"block " + name()}) : std::nullopt, free_text()});
            set.overrides.push_back({a.id, one_of(catalogue().exercises).key,
                                     one_of(catalogue().cautions).key, "reason enough " + free_text(),
                                     "coach" + tidy_text(), date});
        }
        set.blocks.push_back(block(set, a));
    }

    std::mt19937_64 random_;
    int named_ = 0;
};

} // namespace

TEST_CASE("60 random gyms with awkward texts come back bit for bit, and are written again byte for byte") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        check_round_trip(RandomGym(seed).records());
    }
}

TEST_CASE("an empty store and one with a kit of no items come back") {
    check_round_trip({});
    RecordSet bare;
    bare.kits.push_back({{"shed"}, "Shed", MassUnit::kg, {}});
    check_round_trip(bare);
}

TEST_CASE("the demo facility comes back byte for byte") {
    check_round_trip(make_demo_facility(1, today).records);
}

TEST_CASE("the examples of the guide can be taken in, in their order, and add nothing the second time") {
    const std::string guide = file_text("docs/guide/import_records.md");
    Store store(":memory:");
    for (const bool second_time : {false, true})
        for (const RecordKind kind : import_order()) {
            const auto section = guide.find("## `" + word(kind) + ".csv`");
            REQUIRE(section != std::string::npos);
            const auto begin = guide.find("```csv\n", section) + 7, end = guide.find("```", begin);
            const int added = take(store, kind, guide.substr(begin, end - begin));
            CHECK((added > 0) == !second_time);
        }
    CHECK(store.load_all().athletes.size() == 2);
}
