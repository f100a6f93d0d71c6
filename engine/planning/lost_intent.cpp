#include "planning/lost_intent.h"

#include "equipment/exact_mass.h"
#include "equipment/load_words.h"
#include "planning/lift_swap.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace amentum {
namespace {

constexpr double slow_down_below = 0.90;
constexpr double reached = 0.975; // a pair that comes as near as a step of dumbbells does

std::string percent(double share) {
    return format_fixed(100 * share, 0) + " %";
}

std::string capital(std::string text) {
    if (!text.empty())
        text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    return text;
}

std::string quality_name(const OtherGym& gym, const std::string& key) {
    for (const auto& quality : gym.request.qualities)
        if (quality.key == key) {
            std::string name = quality.name;
            name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
            return name;
        }
    return key.empty() ? "its purpose" : key;
}

std::string written_load(const OtherGym& gym, const BlockLine& line) {
    return line.load ? describe_mass(*line.load, gym.first_kit.unit) : line.load_words;
}

// How far the share of what was wanted could be off through what does not cancel between the two lifts.
Interval band_of(const OtherGym& gym, const RetargetedLine& line, const Exercise& to) {
    const Interval none{line.kept, line.kept};
    if (!line.equal || line.equal->standard_error <= 0 || !line.to || !line.to->load)
        return none;
    const double z = z80 * line.equal->standard_error;
    const auto share_at = [&](double equal) -> std::optional<double> {
        if (line.basis == IntentBasis::lead_leg) {
            const auto made = gym.legs.demand(Gym::other, to, *line.to->load);
            const auto wanted = gym.legs.demand(Gym::other, to, Mass::kilograms(std::max(0.0, equal)));
            return made && wanted && *wanted > 0 ? std::optional(*made / *wanted) : std::nullopt;
        }
        const auto moved = moved_mass(gym.request, to, *line.to->load);
        const auto body = moved_mass(gym.request, to, Mass::kilograms(0));
        const double wanted = equal + (body ? body->kilograms() : 0);
        return moved && wanted > 0 ? std::optional(moved->kilograms() / wanted) : std::nullopt;
    };
    const double scale = line.reach > 0 ? line.kept / line.reach : 0;
    const auto low = share_at(line.equal->load.kilograms() + z),
               high = share_at(line.equal->load.kilograms() - z);
    return {low ? std::min(line.kept, *low * scale) : line.kept,
            high ? std::clamp(*high * scale, line.kept, std::max(line.kept, scale)) : line.kept};
}

std::string share_said(const RetargetedLine& line) {
    const double low = line.kept_band.low, high = line.kept_band.high;
    return percent(line.kept) +
           (high - low > 0.01 ? " (" + format_fixed(100 * low, 0) + " to " + format_fixed(100 * high, 0) + ")"
                              : "");
}

std::string served_said(const RetargetedLine& line) {
    return percent(line.served) + " of what the exercise is for";
}

std::string why_not_compared(const RetargetedLine& line, const Exercise& from, const Exercise& to) {
    const bool ball = from.means == LoadMeans::ball && to.means == LoadMeans::ball;
    if (ball && line.from.load && line.to->load)
        return exact_mass(*line.from.load) == exact_mass(*line.to->load)
                   ? ""
                   : line.to->load_words + " instead of " + line.from.load_words +
                         ": what another ball changes is not measured here";
    if (from.means == LoadMeans::body && to.means == LoadMeans::body)
        return "";
    return to.means == LoadMeans::band ? "how hard the band pulls is not known"
                                       : "how the loads compare cannot be told";
}

std::string uncompared_words(const RetargetedLine& line, const Exercise& from, const Exercise& to) {
    const std::string why = why_not_compared(line, from, to);
    if (line.served >= worth_saying)
        return why;
    return "keeps " + served_said(line) + (why.empty() ? "" : "; " + why);
}

std::string loss_in_words(const OtherGym& gym, const RetargetedLine& line, const Exercise& from,
                          const Exercise& to) {
    const bool split = from.one_sided && to.one_sided;
    switch (line.basis) {
    case IntentBasis::lead_leg:
        return capital(line.to->load_words) + ": " + share_said(line) + " of what " +
               written_load(gym, line.from) + " asks of " + (split ? "the lead leg." : "each leg.");
    case IntentBasis::load:
        if (from.key == to.key)
            return capital(line.to->load_words) + ": " + percent(line.reach) + " of the " +
                   written_load(gym, line.from) + " written.";
        return capital(line.to->load_words) + ": " + percent(line.reach) +
               " of the load that would ask the same by usual maxima" +
               (line.served < worth_saying ? ", and " + served_said(line) : "") + ".";
    case IntentBasis::served:
        if (const std::string words = uncompared_words(line, from, to); !words.empty())
            return capital(words) + ".";
    }
    return "";
}

std::string purchase_words(const OtherGym& gym, const RetargetedLine& line, const Exercise& to) {
    const bool pair = to.means == LoadMeans::dumbbell_pair;
    if ((!pair && to.means != LoadMeans::dumbbell_single) || !line.limit.ends_with(heaviest_here) ||
        !line.aimed)
        return "";
    const auto size = smallest_dumbbell(gym.request.kit.unit, to.means, *line.aimed * reached);
    if (!size)
        return pair ? "; no pair of dumbbells reaches it, a pair of 100 lb is only 200 lb and grip gives out "
                      "first (common practice, no source)"
                    : "";
    return std::string("; or buy ") + (pair ? "a pair of " : "a ") +
           describe_mass(*size, gym.request.kit.unit) + (pair ? " dumbbells" : " dumbbell");
}

std::string what_to_do(const OtherGym& gym, const RetargetedLine& line, const Exercise& to) {
    if (line.change == Change::kept)
        return "";
    if (line.basis == IntentBasis::served)
        return to.means == LoadMeans::band
                   ? "Take the band, and the distance from its anchor, that leave the reserve written."
                   : "";
    if (line.reach >= slow_down_below)
        return "";
    if (to.part == Part::speed)
        return "Move it as fast as it goes" + purchase_words(gym, line, to) + ".";
    std::string text = "Three counts down, a pause of two at the bottom";
    if (line.to->reps > line.from.reps)
        text += ", " + std::to_string(line.to->reps) + " repetitions instead of " +
                std::to_string(line.from.reps);
    return text + purchase_words(gym, line, to) + ".";
}

} // namespace

std::optional<Mass> smallest_dumbbell(MassUnit unit, LoadMeans means, Mass wanted) {
    const Mass step = unit == MassUnit::lb ? Mass::pounds(5) : Mass::kilograms(2.5);
    const int most = 20;
    const Mass one = means == LoadMeans::dumbbell_pair ? wanted / 2 : wanted;
    const int steps = std::max(1, static_cast<int>(std::ceil(one / step - 1e-9)));
    return steps <= most ? std::optional(step * steps) : std::nullopt;
}

void describe_loss(const OtherGym& gym, RetargetedLine& line, const Exercise& from, const Exercise* to) {
    line.kept_band = {line.kept, line.kept};
    if (!line.to || !to) {
        if (line.loss.empty())
            line.loss = "Nothing here that this athlete may do serves " +
                        quality_name(gym, line.from.purpose) + " in its place.";
        return;
    }
    line.kept_band = band_of(gym, line, *to);
    if (line.kept < worth_saying || !line.loads_compared)
        line.loss = loss_in_words(gym, line, from, *to);
    if (line.to->sets < line.from.sets)
        line.loss += (line.loss.empty() ? "" : " ") + std::string("The minutes leave ") +
                     std::to_string(line.to->sets) + " of " + std::to_string(line.from.sets) + " sets.";
    line.to_do = what_to_do(gym, line, *to);
}

std::string reason_in_other_gym(const OtherGym& gym, const RetargetedLine& line, const Exercise& from,
                                const Exercise& to) {
    const std::string instead = from.key == to.key ? "The same exercise" : "In place of " + from.name;
    std::string text = instead + ", for " + quality_name(gym, line.from.purpose);
    if (line.loads_compared)
        text += "; keeps " + percent(line.kept) + " of the intent" +
                (line.basis == IntentBasis::lead_leg ? " by the lead leg's demand" : "");
    else if (const auto why = why_not_compared(line, from, to); !why.empty())
        text += "; " + why;
    if (!line.limit.empty())
        text += "; limited by " + line.limit;
    if (to.key.starts_with("high_to_low"))
        text += "; pulled from high to low as throwers do (common practice, no source)";
    return text + ".";
}

} // namespace amentum
