// How much of a split squat does the lead leg carry? An estimate; the result to report is the external load.
//
//   model_a      rear foot raised: 0.8436 (body mass + load), standard deviation 0.036 of that sum
//                [Helme2020, 26 men]
//   model_b      rear foot raised: body mass + load - rear leg, because the rear foot's force hardly moved
//                with the load and was about the leg's weight [Helme2020]; a leg is 0.1986 (men), 0.2088
//                (women) of body mass [DeLeva1996, thigh + shank + foot]
//   split_squat  both feet on the floor, or a lunge: 0.75 (body mass + load) [McCurdy2017]
// Standard error: 0.036 (body mass + load) for all three; for model_b and split_squat no error was
// published, and we lend them model_a's (proposal of this project, no source). The two models differ by 6 %:
// that is the honest band.
// Refusals: body mass outside 15 to 250 kg, load negative.
// What it cannot tell: one athlete's share on one day; it depends on trunk lean and stride.
// Example: 85 kg with 80 kg: model_a 139.194 kg, model_b (male) 148.119 kg
#pragma once

#include "values/athlete.h"
#include "values/interval.h"
#include "values/quantity.h"
#include "values/refusal.h"

namespace amentum {

enum class LeadLegModel { model_a, model_b, split_squat };
template <>
inline constexpr std::array<std::pair<LeadLegModel, std::string_view>, 3> words_of<LeadLegModel>{
    {{LeadLegModel::model_a, "model_a"},
     {LeadLegModel::model_b, "model_b"},
     {LeadLegModel::split_squat, "split_squat"}}};

inline constexpr double lead_share_rear_raised = 0.8436; // of the vertical force [Helme2020]
inline constexpr double lead_share_sd = 0.036;           // [Helme2020]
inline constexpr double lead_share_on_floor = 0.75;      // [McCurdy2017]

// In kilograms.
Result<Estimate> estimate_lead_leg_load(LeadLegModel model, Sex sex, Mass body_mass, Mass external_load);

} // namespace amentum
