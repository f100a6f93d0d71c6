#include "demo_facility/statures.h"

#include "demo_facility/people.h"
#include "demo_facility/simulation.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace amentum {
namespace {

constexpr std::string_view in_a_spurt = "Caleb Underhaugh";
constexpr double spurt_m_a_year = 0.045; // above the usual growth, at its height
constexpr double spurt_days = 150; // it is at its height on the last day, and this long before at 61 % of it
constexpr double oldest = 16;      // years
constexpr double day_error_m = 0.003, reading_error_m = 0.002;

// What the spurt has still to bring until the last day, m: the integral of spurt_m_a_year exp(-(x/spurt_days)^2 / 2).
double spurt_to_come(int days_before_last) {
    const double sds = days_before_last / spurt_days;
    return spurt_m_a_year / 365.25 * spurt_days * std::sqrt(M_PI / 2) * std::erf(sds / std::sqrt(2.0));
}

} // namespace

double stature_taped_on(const Athlete& athlete, Date last_day, int day) {
    const double usual = stature_on(athlete, last_day, day);
    return athlete.name == in_a_spurt ? usual - spurt_to_come(demo_days - day) : usual;
}

void add_statures(RecordSet& records, const Athlete& athlete, Date last_day, std::uint64_t seed) {
    if (age_on(athlete, last_day, demo_days) >= oldest || !athlete.stature)
        return;
    RandomStream stream(seed_from(seed, "stature " + athlete.id.text));
    for (int day = demo_days - 7; day >= 0; day -= 30) {
        const Date date = last_day - (demo_days - day);
        const double that_day = stature_taped_on(athlete, last_day, day) + day_error_m * stream.next_normal();
        const bool taped_already =
            std::any_of(records.readings.begin(), records.readings.end(), [&](const auto& r) {
                return r.athlete == athlete.id && r.date == date && r.test == "stature";
            });
        for (int trial = 1; trial <= 2; ++trial) {
            Reading r{athlete.id, date, "stature", Side::none, trial};
            const double read = that_day + reading_error_m * stream.next_normal();
            r.height = Length::centimetres(std::round(1000 * read) / 10);
            r.device = "wall tape";
            r.rater = "Halloran";
            if (!taped_already)
                records.readings.push_back(r);
        }
    }
}

} // namespace amentum
