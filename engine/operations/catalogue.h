// catalogue: what can be prescribed, tested and named here: exercises, test kinds, qualities, kits, cautions.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <string>
#include <vector>

namespace amentum {

struct CatalogueRequest {};
BOOST_DESCRIBE_STRUCT(CatalogueRequest, (), ())

struct CatalogueExercise {
    std::string exercise;
    std::string name;
    std::string pattern;
    std::string part;
    std::string means;
    std::vector<std::string> qualities;
    std::vector<std::string> cautions;
    std::string setup;
};
BOOST_DESCRIBE_STRUCT(CatalogueExercise, (),
                      (exercise, name, pattern, part, means, qualities, cautions, setup))

struct CatalogueTest {
    std::string test;
    std::string name;
    std::string quality;
    std::string unit;
    double trial_error_percent; // of the value for tests whose error grows with it; else in the unit
    double day_error_percent;
    bool error_grows_with_value;
    std::string protocol;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(CatalogueTest, (),
                      (test, name, quality, unit, trial_error_percent, day_error_percent,
                       error_grows_with_value, protocol, sources))

struct CatalogueKit {
    std::string kit;
    std::string name;
    std::string unit;
    std::vector<std::string> bars;  // labels of bars and columns that load_bar can be asked for
    std::vector<std::string> items; // everything, in words
};
BOOST_DESCRIBE_STRUCT(CatalogueKit, (), (kit, name, unit, bars, items))

struct CatalogueCaution {
    std::string caution;
    std::string condition;
    std::string sentence;
    bool overridable;
};
BOOST_DESCRIBE_STRUCT(CatalogueCaution, (), (caution, condition, sentence, overridable))

struct CatalogueAnswer {
    std::vector<CatalogueExercise> exercises;
    std::vector<CatalogueTest> tests;
    std::vector<CatalogueKit> kits;
    std::vector<CatalogueCaution> cautions;
};
BOOST_DESCRIBE_STRUCT(CatalogueAnswer, (), (exercises, tests, kits, cautions))

Result<CatalogueAnswer> catalogue(Workplace&, const CatalogueRequest&);

} // namespace amentum
