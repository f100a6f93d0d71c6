#include "operations/inside/inside.h"

#include "inference/test_scale.h"
#include "operations/inside/embedded_data.h"
#include "operations/inside/local_day.h"
#include "operations/inside/squad_job.h"

#include <chrono>
#include <cmath>
#include <stdexcept>

namespace amentum {
namespace {

ReferenceTables parsed_tables() {
    auto tables = parse_reference_tables(embedded_data());
    if (!tables)
        throw std::runtime_error("the built-in tables are broken: " + tables.refusal().sentence);
    return *std::move(tables);
}

} // namespace

Workplace::Workplace(const Opening& opening)
    : inside_(new Inside{Store(opening.store_file), built_in_tables(), opening.today}) {
    inside_->squad_job = std::make_shared<SquadJob>();
    if (const auto facility = inside_->store.facility())
        inside_->zone = facility->time_zone;
}

Workplace::~Workplace() = default;

const ReferenceTables& built_in_tables() {
    static const ReferenceTables tables = parsed_tables();
    return tables;
}

void Workplace::put_on_table(const std::string& file_name) {
    const std::lock_guard lock(inside_->table);
    inside_->files_on_table.insert(file_name);
}

void Workplace::tell_progress_to(std::function<void(double share)> listener) {
    inside_->fit_job.listener = listener;
    inside_->squad_job->tell(std::move(listener));
}

std::chrono::sys_seconds Workplace::Inside::now() const {
    using namespace std::chrono;
    if (fixed_today)
        return sys_seconds(days(fixed_today->days_since_1970())) + hours(12);
    return floor<seconds>(system_clock::now());
}

Date Workplace::Inside::today() const {
    if (fixed_today)
        return *fixed_today;
    const std::lock_guard lock(zoning);
    const auto there = zone.empty() ? Result<Date>(day_of_this_computer(now())) : local_day(zone, now());
    return there ? *there : day_of_this_computer(now());
}

std::shared_ptr<const FacilityView> Workplace::Inside::view() {
    const std::lock_guard lock(viewing);
    const auto version = store.version();
    if (!latest || version != latest_version) {
        latest = build_view(store.load_all(), tables, fitted, store.list_block_changes());
        latest_version = version;
        const std::lock_guard zone_lock(zoning);
        zone = latest->records.facility ? latest->records.facility->time_zone : "";
    }
    return latest;
}

std::shared_ptr<const RosterModel> Workplace::Inside::roster_model() {
    const auto now = view();
    const std::lock_guard lock(modelling);
    if (modelled_view == now)
        return modelled;
    auto model = std::make_shared<RosterModel>(gather_roster(*now, tables));
    auto earlier = modelled ? modelled->kept : nullptr;
    if (!earlier)
        if (const auto text = store.load_roster_fit())
            if (auto kept = parse_kept_fit(*text))
                earlier = std::make_shared<const KeptFit>(*std::move(kept));
    if (!take_over_fit(*model, earlier))
        fit_roster_model(*model, {run_on_threads, {}, earlier ? &earlier->fit.mode : nullptr});
    modelled = model;
    modelled_view = now;
    return modelled;
}

Facility Workplace::Inside::facility() {
    return store.facility().value_or(Facility{"This facility"});
}

Result<Date> day_up_to_today(const std::string& text, const std::string& what, Date today) {
    const auto date = parse_date(text, "date");
    if (!date || *date <= today)
        return date;
    return Refusal{RefusalCode::impossible_date,
                   "The " + what + " is dated " + date->text() + ", after today.", "date", date->text(),
                   "up to " + today.text()};
}

Result<const Athlete*> athlete_named(const FacilityView& view, const std::string& name) {
    if (const Athlete* athlete = view.athlete(name))
        return athlete;
    std::vector<std::string> names;
    for (const auto& each : view.records.athletes)
        names.push_back(each.name);
    return refuse_unknown("athlete", name, names);
}

Result<const TestKind*> test_named(const ReferenceTables& tables, const std::string& key) {
    if (const TestKind* kind = tables.test_kind(key))
        return kind;
    std::vector<std::string> keys;
    for (const auto& kind : tables.test_kinds)
        keys.push_back(kind.key);
    return refuse_unknown("test", key, keys);
}

Result<const Kit*> kit_named(const FacilityView& view, const std::string& name) {
    std::vector<std::string> names;
    for (const auto& kit : view.records.kits) {
        if (kit.id.text == slug(name))
            return &kit;
        names.push_back(kit.name);
    }
    return refuse_unknown("kit", name, names);
}

ShownEstimate shown_estimate(double value, Interval band, const ShownUnit& unit) {
    return {value * unit.factor, band.low * unit.factor, band.high * unit.factor, unit.unit, unit.decimals};
}

ShownEstimate shown_state(const TestKind& kind, const StateOnDay& state, const Facility& facility, double z) {
    const auto back = back_on_unit(kind.scale, state, z);
    return shown_estimate(back.value, back.band, shown_unit(kind.unit, facility));
}

double shown_load_in(Mass mass, const ShownUnit& unit) {
    return std::round(mass.kilograms() * unit.factor * 1e6) / 1e6;
}

ShownRefusal shown_refusal(const Refusal& refusal) {
    return {static_cast<int>(refusal.code),
            refusal_kind(refusal.code).name,
            refusal.sentence,
            refusal.field,
            refusal.given,
            refusal.allowed};
}

} // namespace amentum
