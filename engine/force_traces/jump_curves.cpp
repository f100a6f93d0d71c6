#include "force_traces/jump_curves.h"

namespace amentum {

JumpCurves integrate_force(const ForceSignal& signal, double weight_n, SampleSpan span) {
    JumpCurves curves{span, std::vector<double>(span.length()), std::vector<double>(span.length()),
                      weight_n / gravity_at_plate};
    const double half_step = signal.step_s() / 2;
    const double* force = signal.vertical.data() + span.from;
    double speed = 0, rise = 0;
    for (std::size_t i = 1; i < span.length(); ++i) {
        const double before = speed;
        speed += half_step * (force[i - 1] + force[i] - 2 * weight_n) / curves.mass_kg;
        rise += half_step * (before + speed);
        curves.speed_ms[i] = speed;
        curves.rise_m[i] = rise;
    }
    return curves;
}

double impulse_above(const ForceSignal& signal, double weight_n, std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t i = from; i < to; ++i)
        sum += signal.vertical[i] + signal.vertical[i + 1] - 2 * weight_n;
    return sum * signal.step_s() / 2;
}

} // namespace amentum
