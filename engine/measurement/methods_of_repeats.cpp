#include "measurement/methods.h"
#include "measurement/test_error_agreement.h"
#include "measurement/test_error_of_days.h"

#include <cmath>
#include <map>

namespace amentum::measurement {
namespace {

bool on_logarithms(const MethodArguments& given) {
    return given.word("scale") == "logarithmic";
}

Result<RepeatTable> table_from(const MethodArguments& given) {
    const auto& values = given.list("values");
    const double columns = given.number("columns");
    const auto width = static_cast<std::size_t>(columns);
    if (columns != std::floor(columns) || values.size() % width != 0)
        return Refusal{RefusalCode::wrong_type,
                       "The values go row by row, one row an athlete, as many in each row.", "columns",
                       std::to_string(values.size()) + " values", "a whole number that divides them"};
    RepeatTable table;
    for (std::size_t i = 0; i < values.size(); i += width)
        table.emplace_back(values.begin() + static_cast<std::ptrdiff_t>(i),
                           values.begin() + static_cast<std::ptrdiff_t>(i + width));
    return table;
}

Result<double> scaled(double value, bool logarithmic) {
    if (!logarithmic)
        return value;
    if (!(value > 0))
        return refuse_range("values", value, 1e-9, 1e6, "", "Logarithms need values above 0.");
    return std::log(value);
}

std::vector<MethodOutput> outputs_of(const EstimatedError& e, const std::string& unit) {
    return {{"typical_error", e.error, unit},
            {"low", e.band.low, unit},
            {"high", e.band.high, unit},
            {"degrees_of_freedom", e.freedom, "1"},
            {"repeats_needed", static_cast<double>(repeats_to_settle(e.freedom)), "pairs"}};
}

Result<MethodAnswer> run_typical_error_from_trials(const MethodArguments& given) {
    auto table = table_from(given);
    if (!table)
        return table.refusal();
    for (auto& row : *table.operator->())
        for (double& value : row) {
            const auto each = scaled(value, on_logarithms(given));
            if (!each)
                return each.refusal();
            value = *each;
        }
    const bool removed = given.word("trial_means") == "removed";
    const auto error = estimate_error_of_trials(*table, removed ? Learning::removed : Learning::left_in);
    if (!error)
        return error.refusal();
    const std::string unit = on_logarithms(given) ? "1" : "test unit";
    MethodAnswer answer{outputs_of(error->error, unit)};
    if (removed)
        answer.outputs.push_back({"learning_first_to_last", error->learning.back().value, unit,
                                  error->learning.back().standard_error});
    return answer;
}

Result<MethodAnswer> run_test_error_of_days(const MethodArguments& given) {
    const auto &values = given.list("values"), &days = given.list("days"), &athletes = given.list("athletes");
    if (values.size() != days.size() || values.size() != athletes.size())
        return Refusal{RefusalCode::wrong_type, "Each value needs its day and its athlete's number.", "days",
                       std::to_string(days.size()) + " days, " + std::to_string(athletes.size()) +
                           " athletes",
                       std::to_string(values.size()) + " of each"};
    std::map<double, DaySeries> by_athlete;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto value = scaled(values[i], on_logarithms(given));
        if (!value)
            return value.refusal();
        auto& series = by_athlete[athletes[i]];
        const int day = static_cast<int>(days[i]);
        if (!series.empty() && series.back().day >= day)
            return Refusal{RefusalCode::impossible_date, "An athlete's days go forward, each once.", "days",
                           std::to_string(day), "after day " + std::to_string(series.back().day)};
        series.push_back({day, *value, std::pow(given.number("known_error"), 2)});
    }
    std::vector<DaySeries> all;
    for (auto& [athlete, series] : by_athlete)
        all.push_back(std::move(series));
    const auto error = estimate_error_of_days(all, given.number("published"));
    if (!error)
        return error.refusal();
    return MethodAnswer{outputs_of(*error, on_logarithms(given) ? "1" : "test unit")};
}

Result<MethodAnswer> run_test_error_pooled(const MethodArguments& given) {
    if (given.has("own") != given.has("degrees_of_freedom"))
        return refuse_missing(given.has("own") ? "degrees_of_freedom" : "own",
                              "this gym's own error and its degrees of freedom go together");
    ErrorLikelihood nothing = [](double) { return 0.0; };
    const auto pooled = pool_with_published(
        given.number("published"),
        given.has("own")
            ? likelihood_of_repeats(error_with_band(given.number("own"), given.number("degrees_of_freedom")))
            : nothing);
    if (!pooled)
        return pooled.refusal();
    return MethodAnswer{{{"pooled_error", pooled->error, "unit of published"},
                         {"low", pooled->band.low, "unit of published"},
                         {"high", pooled->band.high, "unit of published"},
                         {"mean_of_log", pooled->log_mean, "1", pooled->log_sd},
                         {"share_of_prior", pooled->share_of_prior, "1"}}};
}

Result<MethodAnswer> run_intraclass_correlation(const MethodArguments& given) {
    const auto table = table_from(given);
    if (!table)
        return table.refusal();
    const auto all = intraclass_correlations(*table);
    if (!all)
        return all.refusal();
    MethodAnswer answer;
    for (int form = 0; form < 3; ++form) {
        const std::string name = "icc_" + std::to_string(form + 1);
        answer.outputs.push_back({name + "_1", all->single[form].value, "1"});
        answer.outputs.push_back({name + "_1_low", all->single[form].band.low, "1"});
        answer.outputs.push_back({name + "_1_high", all->single[form].band.high, "1"});
        answer.outputs.push_back({name + "_k", all->of_mean[form].value, "1"});
    }
    answer.outputs.push_back({"within_rows_error", std::sqrt(all->within_rows), "test unit"});
    answer.outputs.push_back({"typical_error", std::sqrt(all->residual), "test unit"});
    answer.notes.push_back(
        "A high correlation does not say that the error is small: it says that the athletes differ.");
    return answer;
}

Result<MethodAnswer> run_limits_of_agreement(const MethodArguments& given) {
    const double z = given.word("multiplier") == "2" ? 2 : z95;
    const auto limits = limits_of_agreement(given.list("first"), given.list("second"), z);
    if (!limits)
        return limits.refusal();
    return MethodAnswer{{{"bias", limits->bias.value, "test unit", limits->bias.standard_error},
                         {"sd_of_differences", limits->spread, "test unit"},
                         {"low_limit", limits->low.value, "test unit", limits->low.standard_error},
                         {"high_limit", limits->high.value, "test unit", limits->high.standard_error}}};
}

MethodInput values_input() {
    return {"values", "row by row: one athlete's trials after another's", -1e6, 1e6, {}, {}, true};
}
MethodInput columns_input() {
    return {"columns", "trials, raters or tools in each row", 2, 60};
}
MethodInput scale_input() {
    return {"scale", "logarithmic when the error grows with the value", 0, 0, {"linear", "logarithmic"},
            "linear"};
}
MethodInput published_input() {
    return {"published", "the published error, in the unit of the values or as a fraction", 1e-9, 1e6};
}

std::vector<Method> methods_of_own_error() {
    return {
        {"typical_error_from_trials",
         "How large is a test's error between trials, by this gym's own repeats?",
         {values_input(),
          columns_input(),
          scale_input(),
          {"trial_means",
           "whether learning from trial to trial is taken out",
           0,
           0,
           {"removed", "left_in"},
           "removed"}},
         {"Hopkins2000", "BlandAltman1996error"},
         run_typical_error_from_trials},
        {"test_error_of_days",
         "How large is a test's error between days, when athletes also really change?",
         {{"athletes", "number of the athlete each value is of", 0, 1e6, {}, {}, true},
          {"days", "day each value was measured", 0, 1e6, {}, {}, true},
          {"values", "one value a day", -1e6, 1e6, {}, {}, true},
          published_input(),
          {"known_error",
           "the part of each value's error that is known: trial error / sqrt(n)",
           0,
           1e6,
           {},
           "0"},
          scale_input()},
         {"DurbinKoopman2012"},
         run_test_error_of_days},
        {"test_error_pooled",
         "Which error of a test should be believed, the published or this gym's own?",
         {published_input(),
          {"own", "this gym's own estimate", 1e-9, 1e6, {}, ""},
          {"degrees_of_freedom", "of the own estimate", 1, 1e6, {}, ""}},
         {"ProjectProposal"},
         run_test_error_pooled},
    };
}

} // namespace

std::vector<Method> methods_of_repeats() {
    auto all = methods_of_own_error();
    all.push_back({"intraclass_correlation",
                   "How well do repeats or raters agree, against how much the athletes differ?",
                   {values_input(), columns_input()},
                   {"ShroutFleiss1979"},
                   run_intraclass_correlation});
    all.push_back({"limits_of_agreement",
                   "How far apart are two ways of measuring the same athletes?",
                   {{"first", "each athlete's value one way", -1e6, 1e6, {}, {}, true},
                    {"second", "each athlete's value the other way", -1e6, 1e6, {}, {}, true},
                    {"multiplier", "standard deviations each way", 0, 0, {"1.96", "2"}, "1.96"}},
                   {"BlandAltman1986"},
                   run_limits_of_agreement});
    return all;
}

} // namespace amentum::measurement
