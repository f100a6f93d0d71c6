#include "equipment/ramp_room.h"

#include <algorithm>
#include <bit>

namespace amentum {
namespace {

std::size_t words_for(std::size_t choices) {
    return (choices + 63) / 64;
}

} // namespace

RampRooms::RampRooms(const ChoicesOfSets& choices)
    : choices_(choices), between_(choices), least_(least_put_on(choices, between_)),
      after_(least_put_on_after(choices, between_)) {
    for (const auto& set : choices) {
        const std::size_t words = words_for(set.size());
        auto& all = all_.emplace_back(words);
        auto& holders = holders_.emplace_back(PlateCounts::most_kinds);
        for (std::size_t c = 0; c < set.size(); ++c) {
            const std::uint64_t bit = std::uint64_t{1} << c % 64;
            all[c / 64] |= bit;
            for (std::size_t kind = 0; kind < PlateCounts::most_kinds; ++kind)
                for (std::size_t n = 0; n < set[c].plates.of[kind]; ++n) {
                    if (holders[kind].size() <= n * words)
                        holders[kind].resize((n + 1) * words);
                    holders[kind][n * words + c / 64] |= bit;
                }
        }
    }
}

std::uint64_t RampRooms::those_with_what_is_on(std::size_t set, std::size_t word) const {
    std::uint64_t those = ~std::uint64_t{0};
    for (const auto& [kind, count] : on_) {
        const Words& holders = holders_[set][kind];
        const std::size_t at = (count - 1) * all_[set].size() + word;
        those &= at < holders.size() ? holders[at] : 0; // no choice of this set has so many
    }
    return those;
}

int RampRooms::put_on_up_to(std::size_t set, std::size_t choice) const {
    const std::uint8_t* put_on = between_.onto(set, choice);
    int least = no_limit;
    for (const Reached& before : reached_)
        least = std::min(least, before.put_on + put_on[before.choice]);
    return least;
}

RampRoom RampRooms::look(std::size_t from, std::size_t to, const PlateCounts& held, int limit,
                         const OpenSets* among, OpenSets& open) {
    on_.clear();
    for (std::size_t kind = 0; kind < PlateCounts::most_kinds; ++kind)
        if (held.of[kind] > 0)
            on_.push_back({kind, held.of[kind]});
    RampRoom room{{}, {}, {}, {}, no_limit};
    room.most.of.fill(PlateCounts::most_of_a_kind);
    room.sure.of.fill(PlateCounts::most_of_a_kind);
    for (std::size_t set = from; set <= to; ++set) {
        PlateCounts some;
        room.up_to[set] = room.starting[set] = no_limit;
        open.first[set] = bits_.size();
        next_.clear();
        for (std::size_t w = 0; w < all_[set].size(); ++w) {
            std::uint64_t left =
                those_with_what_is_on(set, w) & (among ? bits_[among->first[set] + w] : all_[set][w]);
            for (std::uint64_t bits = left; bits != 0; bits &= bits - 1) {
                const std::size_t c = w * 64 + static_cast<std::size_t>(std::countr_zero(bits));
                const RampChoice& choice = choices_[set][c];
                const int later = after_[to][set][c];
                int put_on = choice.count;
                if (set > from && put_on + later <= limit)
                    put_on = put_on_up_to(set, c);
                if (put_on + later > limit) {
                    left ^= bits & -bits;
                    continue;
                }
                next_.push_back({c, put_on});
                some = some.joined_with(choice.plates);
                room.sure = room.sure.met_with(choice.plates);
                room.up_to[set] = std::min(room.up_to[set], put_on);
                room.starting[set] = std::min(room.starting[set], choice.count + later);
            }
            bits_.push_back(left);
        }
        if (next_.empty())
            return room;
        room.most = room.most.met_with(some);
        std::swap(reached_, next_);
    }
    room.fewest = room.up_to[to];
    return room;
}

} // namespace amentum
