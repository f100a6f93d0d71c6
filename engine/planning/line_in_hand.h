// A line being worked on: what is lifted in all, which loads can be made, and the steps that change it.
//
// Steps return true when they changed something; each adds its reason either way.
#pragma once

#include "planning/ball_speed_fall.h"
#include "planning/next_line.h"
#include "planning/next_load.h"
#include "planning/repetitions.h"

namespace amentum {

class LineInHand {
public:
    explicit LineInHand(const LineCase& given);

    void take_level();
    void take_found_load();
    void take_reserve();
    void take_estimate();
    void take_ball();
    void take_sets_of_today();
    NextLine finished() &&;

private:
    bool counts_reserve() const; // speed, mobility, ball throws and carries do not
    bool legs() const;
    double body() const; // kg, lifted with the load
    double reserve_of(const BlockLine& line) const;
    std::optional<double> lifted(const BlockLine& line) const; // kg in all; none without a load
    std::vector<SetShown> shown(const std::vector<const SetDone*>& sets, const BlockLine& as_written) const;
    std::optional<SetDifference> difference(const std::vector<const SetDone*>& sets,
                                            const BlockLine& as_written) const;
    std::optional<double> repetitions_beside(const std::vector<const SetDone*>& sets,
                                             const BlockLine& as_written) const;
    std::optional<double> ceiling() const; // kg in all, from the middle of today's estimate

    std::optional<MadeLoad> made_not_above(double lifted_kg) const;
    bool put_load(const std::optional<MadeLoad>& made); // false: it is the load already
    bool put_reps(int reps);
    void raise(const SetDifference& difference, const std::string& seen);
    void lower(const SetDifference& difference, const std::string& seen);
    void change_repetitions_only(double repetitions, const std::string& seen);
    bool put_lighter_ball();
    bool take_ball_of_today();
    std::string said(double lifted_kg) const;
    void say(std::string sentence, std::string source);

    const LineCase& given_;
    Loading loading_;
    BlockLine now_;
    std::vector<WhyLine> why_;
    bool reserve_read_ = false; // last time's sets said something
    bool stopped_ = false;
};

} // namespace amentum
