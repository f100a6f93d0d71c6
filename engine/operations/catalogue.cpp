#include "operations/catalogue.h"

#include "operations/inside/inside.h"
#include "values/shortest_decimal.h"

namespace amentum {
namespace {

CatalogueExercise shown(const ReferenceTables& tables, const Exercise& e) {
    CatalogueExercise line{e.key, e.name, e.pattern, word(e.part), word(e.means), {}, e.cautions, e.setup};
    for (const auto& [key, share] : e.qualities)
        line.qualities.push_back(tables.quality(key)->name);
    return line;
}

CatalogueTest shown(const ReferenceTables& tables, const TestKind& kind) {
    const double factor = kind.scale == Scale::logarithmic ? 100 : 1;
    const Quality* quality = tables.quality(kind.quality); // none for stature
    return {kind.key,
            kind.name,
            quality ? quality->name : "",
            word(kind.unit),
            kind.trial_error * factor,
            kind.day_error * factor,
            kind.scale == Scale::logarithmic,
            kind.protocol,
            kind.sources};
}

CatalogueKit shown(const Kit& kit) {
    CatalogueKit line{kit.id.text, kit.name, word(kit.unit), {}, {}};
    const auto unit = shown_mass(kit.unit);
    for (const auto& item : kit.items) {
        const bool loaded = item.kind == ItemKind::straight_bar || item.kind == ItemKind::hex_bar ||
                            item.kind == ItemKind::safety_bar || item.kind == ItemKind::camber_bar ||
                            item.kind == ItemKind::column;
        if (loaded)
            line.bars.push_back(item.label);
        std::string words = std::to_string(item.count) + " x " + item.label;
        if (item.mass)
            words += ", " + format_fixed(item.mass->kilograms() * unit.factor, 2) + " " + unit.unit;
        if (item.height)
            words += ", " + format_fixed(item.height->centimetres(), 0) + " cm high";
        line.items.push_back(words);
    }
    return line;
}

} // namespace

Result<CatalogueAnswer> catalogue(Workplace& workplace, const CatalogueRequest&) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    CatalogueAnswer answer{};
    for (const auto& each : inside.tables.exercises)
        answer.exercises.push_back(shown(inside.tables, each));
    for (const auto& each : inside.tables.test_kinds)
        answer.tests.push_back(shown(inside.tables, each));
    for (const auto& each : view->records.kits)
        answer.kits.push_back(shown(each));
    for (const auto& each : inside.tables.cautions)
        answer.cautions.push_back({each.key, each.condition, each.sentence, each.overridable});
    return answer;
}

} // namespace amentum
