// stop_and_refer: the plain signs at which a session ends and a qualified clinician takes over.
//
// The same list for everybody, with the pain entries of one thrower when one is named. The tool does not diagnose, clear or
// predict injury.
#pragma once

#include "operations/check_arm.h"

namespace amentum {

struct StopAndReferRequest {
    std::optional<std::string> athlete;
};
BOOST_DESCRIBE_STRUCT(StopAndReferRequest, (), (athlete))

struct ShownSign {
    std::string key;
    std::string sentence;
    bool today; // to a clinician on this very day
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(ShownSign, (), (key, sentence, today, sources))

struct ShownRegion {
    std::string key;
    std::string name;
    bool stops_throwing;
};
BOOST_DESCRIBE_STRUCT(ShownRegion, (), (key, name, stops_throwing))

struct StopAndReferAnswer {
    std::vector<ShownSign> signs; // those of today first
    std::string closing;
    std::vector<ShownRegion> regions;
    std::string athlete; // empty: nobody named
    std::string name;
    std::string guardian;         // whom to tell, for a minor; may be empty
    std::vector<ShownPain> pains; // newest first
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(StopAndReferAnswer, (),
                      (signs, closing, regions, athlete, name, guardian, pains, words))

Result<StopAndReferAnswer> stop_and_refer(Workplace&, const StopAndReferRequest&);

} // namespace amentum
