// A refusal: the input is wrong, or the data cannot answer. It is a value, not an exception, and it can be
// shown to a coach as it stands: one sentence, the field, what was given, what is allowed.
//
// Every code stands in the one numbered table of refusal.cpp; docs/refusals.md is printed from it.
// A broken contract between functions is an assert; a broken disk or database is an exception.
#pragma once

#include <cassert>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <variant>

namespace amentum {

enum class RefusalCode {
    missing_field = 101,         // a field that is needed was not given
    unknown_field = 102,         // a field that the request does not have
    wrong_type = 103,            // text where a number is needed, and the like
    out_of_range = 104,          // a number outside what is possible or published
    unknown_choice = 105,        // a word that is not one of the allowed words
    impossible_date = 106,       // 30 February; a birth date in the future
    unreadable_file = 107,       // not RFC 4180, not UTF-8, no header line
    unknown_name = 201,          // no such athlete, kit, exercise, block, method
    already_held = 202,          // the same key is held with other values
    two_units = 203,             // the same quantity in two units on one line
    method_does_not_apply = 301, // a published method outside its published range
    too_few_data = 302,          // the data cannot answer
    load_not_makeable = 401,     // no such load with the plates owned
    no_block_fits = 402,         // the limits leave no block
    caution_needs_reason = 501,  // a caution is overridden without a reason
    blocked_by_guard_rail = 502, // a rule that no one may override
    quiet_too_short = 601,       // a trace without a second of quiet standing before the effort
    quiet_too_noisy = 602,       // the athlete moved, or the plate shakes, while being weighed
    no_flight = 603,             // nobody left the plate
    second_hop = 604,            // another take-off before the landing has settled, where one jump is meant
    offset_too_large = 605,      // the empty plate is too far from zero to correct
    saturated_plate = 606,       // the force stays at the top of the plate's range
    wrong_rate = 607,            // too few samples a second, or uneven ones
    peak_at_end = 608,           // the pull was still rising when the trace ended
    trials_disagree = 609,       // trials further apart than the method allows
    not_this_effort = 610,       // the trace does not show the effort it is said to show
    no_such_posture = 701,       // no posture of this body stands in balance in this set-up
    over_determined = 702, // more settings than the lift leaves free: posture and balance would contradict
    stopped = 801,         // the asker stopped a long calculation; nothing of it is kept
};

struct Refusal {
    RefusalCode code;
    std::string sentence; // whole, in plain words; never "invalid input"
    std::string field;    // "load_lb", or "line 7, load_lb"; empty when no one field is to blame
    std::string given;    // as it was given; empty when nothing was
    std::string allowed;  // "1 to 15", "one of left, right, both"

    friend bool operator==(const Refusal&, const Refusal&) = default;
};

struct RefusalKind {
    RefusalCode code;
    const char* name;
    const char* meaning;
};

// The whole table, in order of code.
std::span<const RefusalKind> refusal_kinds();
const RefusalKind& refusal_kind(RefusalCode code);

// Either a value or the refusal to give one.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : held_(std::move(value)) {}
    Result(Refusal refusal) : held_(std::move(refusal)) {}

    explicit operator bool() const { return std::holds_alternative<T>(held_); }
    const T& value() const& {
        assert(*this);
        return *std::get_if<T>(&held_);
    }
    T&& value() && {
        assert(*this);
        return std::move(*std::get_if<T>(&held_));
    }
    const T& operator*() const& { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() {
        assert(*this);
        return std::get_if<T>(&held_);
    }
    const Refusal& refusal() const {
        assert(!*this);
        return *std::get_if<Refusal>(&held_);
    }

private:
    std::variant<T, Refusal> held_;
};

// For steps that give nothing back but may refuse.
struct Done {};

// Ready-made sentences, so that the same fault reads the same everywhere.
Refusal refuse_missing(std::string field, std::string what_it_is);
Refusal refuse_range(std::string field, double given, double low, double high, std::string unit,
                     std::string why = "");
Refusal refuse_choice(std::string field, std::string given, std::span<const std::string> choices);
Refusal refuse_unknown(std::string field, std::string given, std::span<const std::string> known);

} // namespace amentum
