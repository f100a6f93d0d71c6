#include "demo_facility/simulation.h"

#include "demo_facility/people.h"
#include "inference/random_stream.h"
#include "values/quantity.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double grown_man = 1.84, grown_woman = 1.74; // m, of the adults here
constexpr double fading_days = 180;                    // of the part of a block's gain that is not kept

std::vector<TrueBlock> blocks_of(RandomStream& stream, const std::array<double, demo_qualities>& level) {
    std::vector<TrueBlock> blocks;
    for (int first = 40 + static_cast<int>(40 * stream.next_uniform()); first + block_days < demo_days;
         first += 190) {
        const int quality = static_cast<int>(stream.next_uniform() * demo_qualities);
        const double gain = usual_gain_at(level[static_cast<std::size_t>(quality)]);
        blocks.push_back({first, block_days, quality, gain * (0.7 + 0.6 * stream.next_uniform())});
    }
    return blocks;
}

double block_gain_on(const TrueBlock& block, int day) {
    if (day <= block.first_day)
        return 0;
    const double done = std::min(1.0, (day - block.first_day) / static_cast<double>(block.days));
    const int since = std::max(0, day - block.first_day - block.days);
    return block.gain * done * (kept_after_block + (1 - kept_after_block) * std::exp(-since / fading_days));
}

double usual_velocity(const Athlete& athlete, double age, double stature) {
    double adult = athlete.sport == Sport::softball ? 27.0 : athlete.sport == Sport::javelin ? 23.5 : 36.5;
    if (athlete.sport == Sport::javelin && athlete.sex == Sex::female)
        adult -= 4.0;
    if (athlete.role != Role::pitcher && athlete.sport == Sport::baseball)
        adult -= 1.2;
    if (athlete.level == Level::professional)
        adult += 1.8;
    if (age >= 18)
        return adult;
    const double grown = athlete.sex == Sex::male ? grown_man : grown_woman;
    const double inches = Length::metres(std::max(0.0, grown - stature)).inches();
    return adult - Speed::miles_per_hour(growth_mph_per_year * (18 - age) + growth_mph_per_inch * inches)
                       .metres_per_second();
}

double usual_mass(const Athlete& athlete, double age, double stature) {
    const double grown = athlete.sex == Sex::male ? 26.0 : 23.6; // kg/m2 of a strong adult thrower
    return (grown - 0.75 * std::max(0.0, 18 - age)) * stature * stature;
}

} // namespace

double usual_gain_at(double z) {
    return usual_block_gain * std::clamp(1 - z / 2, 0.2, 2.0);
}

double stature_on(const Athlete& athlete, Date last_day, int day) {
    const double now = athlete.stature            ? athlete.stature->metres()
                       : athlete.sex == Sex::male ? grown_man
                                                  : grown_woman;
    const auto growing = [&](int on) { return std::min(16.5, age_on(athlete, last_day, on)); };
    return now - metres_a_year * (growing(demo_days) - growing(day));
}

double age_on(const Athlete& athlete, Date last_day, int day) {
    return decimal_years(athlete.birth_date, last_day - (demo_days - day));
}

TrueThrower simulate_thrower(const Athlete& athlete, Date last_day, std::uint64_t seed) {
    RandomStream stream(seed_from(seed, athlete.id.text));
    TrueThrower thrower{};
    for (double& z : thrower.level)
        z = std::clamp(stream.next_normal(), -2.2, 2.2);
    thrower.blocks = blocks_of(stream, thrower.level);
    thrower.findable = stream.next_uniform() > 0.15;
    const double residual = own_residual_sd * stream.next_normal(),
                 build = std::exp(0.06 * stream.next_normal());
    std::array<double, demo_qualities> walk{};
    for (int day = 0; day <= demo_days; ++day) {
        std::array<double, demo_qualities> state{};
        double between = 0, within = 0;
        for (std::size_t k = 0; k < demo_qualities; ++k) {
            walk[k] += true_drift_sd_per_sqrt_day * stream.next_normal();
            double gained = walk[k];
            for (const auto& block : thrower.blocks)
                if (static_cast<std::size_t>(block.quality) == k)
                    gained += block_gain_on(block, day);
            state[k] = thrower.level[k] + gained;
            between += true_effects[k].between * thrower.level[k];
            within += true_effects[k].within * gained;
        }
        const double age = age_on(athlete, last_day, day), stature = stature_on(athlete, last_day, day);
        thrower.state.push_back(state);
        thrower.velocity.push_back(usual_velocity(athlete, age, stature) +
                                   true_velocity_spread * (between + within) + residual);
        thrower.body_mass_kg.push_back(usual_mass(athlete, age, stature) * build);
    }
    thrower.grown_ms =
        usual_velocity(athlete, age_on(athlete, last_day, demo_days),
                       stature_on(athlete, last_day, demo_days)) -
        usual_velocity(athlete, age_on(athlete, last_day, 0), stature_on(athlete, last_day, 0));
    return thrower;
}

} // namespace amentum
