// A long fit on a thread of its own: begun, looked at, waited for, stopped. One at a time.
#pragma once

#include "values/refusal.h"

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace amentum {

class FitJob {
public:
    enum class State { none, running, done, stopped, refused };
    struct Seen {
        State state = State::none;
        double share = 0; // of the work, 0 to 1, as a guess
        std::optional<Refusal> refusal = {};
    };

    ~FitJob();

    // work(going): told how far it is; false: it is to stop. Answers a refusal when it failed. False: one runs already.
    bool begin(std::function<std::optional<Refusal>(const std::function<bool(double)>& going)> work);
    void stop();
    Seen look();
    Seen wait();

    std::function<void(double share)> listener = {}; // set before the first begin

private:
    std::mutex mutex_;
    std::condition_variable ended_;
    Seen seen_;
    bool stopping_ = false;
    std::jthread thread_;
};

} // namespace amentum
