// priors: what is believed before this gym's records are asked, who changed it, and what the records make of it.
//
// Each slope stands in velocity for a usual twelve-week improvement, as explain_velocity shows it: the prior as the joint model
// takes it (its sd doubled, because published slopes lie between athletes) beside the posterior of the same fit. How far
// twelve weeks move a quality stands in SDs of it; the joint model does not estimate that. mean and sd are the table's own
// numbers, which change_prior edits.
// What it cannot tell: whether a prior is right. Where the records hardly move it, nothing here has checked it.
#pragma once

#include "operations/shown.h"
#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

namespace amentum {

struct PriorsRequest {};
BOOST_DESCRIBE_STRUCT(PriorsRequest, (), ())

struct ShownPriorEdit {
    int number; // through the whole facility
    std::string date;
    std::string author;
    std::string reason;
    bool published; // back to the published value; mean and sd are null
    std::optional<double> mean;
    std::optional<double> sd;
    std::string words; // "0.30 give or take 0.20"; "back to the published value"
};
BOOST_DESCRIBE_STRUCT(ShownPriorEdit, (), (number, date, author, reason, published, mean, sd, words))

struct ShownPrior {
    std::string kind;    // slope, attainable_change
    std::string quality; // key
    std::string name;
    double mean; // in force: SDs of velocity for one SD of the quality, or SDs of the quality in twelve weeks
    double sd;
    double published_mean;
    double published_sd;
    std::string published_why;
    std::vector<std::string> published_sources;
    bool edited;                       // what is in force is not the published value
    std::string whose;                 // "The literature's word", "Kim Osei's word"
    std::vector<ShownPriorEdit> edits; // the first first
    ShownEstimate prior;
    std::optional<ShownEstimate> posterior; // null: these records say nothing of it
    std::optional<double> learned;          // of the posterior: 0 the prior alone, 1 these records alone
    std::string words;                      // one sentence, or two
};
BOOST_DESCRIBE_STRUCT(ShownPrior, (),
                      (kind, quality, name, mean, sd, published_mean, published_sd, published_why,
                       published_sources, edited, whose, edits, prior, posterior, learned, words))

struct PriorsAnswer {
    std::string version; // "priors 1.3": table 1 with three edits
    int edits;
    std::vector<ShownPrior> slopes; // by the table's order
    std::vector<ShownPrior> attainable_changes;
    std::string no_posterior; // why the joint model says nothing at all; empty when it does
    std::vector<std::string> words;
    std::string model;
    std::vector<std::string> sources;
};
BOOST_DESCRIBE_STRUCT(PriorsAnswer, (),
                      (version, edits, slopes, attainable_changes, no_posterior, words, model, sources))

Result<PriorsAnswer> priors(Workplace&, const PriorsRequest&);

} // namespace amentum
