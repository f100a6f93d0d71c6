#include "operations/inside/fit_job.h"

#include <algorithm>

namespace amentum {

FitJob::~FitJob() {
    stop();
}

bool FitJob::begin(std::function<std::optional<Refusal>(const std::function<bool(double)>&)> work) {
    const std::lock_guard lock(mutex_);
    if (seen_.state == State::running)
        return false;
    if (thread_.joinable())
        thread_.join(); // has ended; its last line is behind the lock
    seen_ = {State::running};
    stopping_ = false;
    thread_ = std::jthread([this, work = std::move(work)] {
        const auto refusal = work([this](double share) {
            const std::lock_guard inside(mutex_);
            seen_.share = std::max(seen_.share, share);
            if (listener)
                listener(seen_.share);
            return !stopping_;
        });
        const std::lock_guard inside(mutex_);
        seen_.refusal = refusal;
        seen_.state = !refusal                                ? State::done
                      : refusal->code == RefusalCode::stopped ? State::stopped
                                                              : State::refused;
        if (!refusal)
            seen_.share = 1;
        ended_.notify_all();
    });
    return true;
}

void FitJob::stop() {
    const std::lock_guard lock(mutex_);
    stopping_ = true;
}

FitJob::Seen FitJob::look() {
    const std::lock_guard lock(mutex_);
    return seen_;
}

FitJob::Seen FitJob::wait() {
    std::unique_lock lock(mutex_);
    ended_.wait(lock, [&] { return seen_.state != State::running; });
    return seen_;
}

} // namespace amentum
