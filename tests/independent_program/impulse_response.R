# What R says of a model with a lasting and a passing effect of training, for impulse_response_test.cpp beside it. Base R
# only; run by: Rscript impulse_response.R. Sums instead of the recursion, the days by search on one day's effect, the
# errors of a fit by central differences and solve().
say <- function(name, value) cat(name, format(as.numeric(value), digits = 14), "\n")

level <- function(x, loads, t) { # x: start, k1, k2, tau1, tau2; loads[1] is day 0
  s <- seq_len(min(t, length(loads))) - 1
  x[1] + sum(loads[s + 1] * (x[2] * exp(-(t - s) / x[4]) - x[3] * exp(-(t - s) / x[5])))
}
steady <- c(500, 1, 2, 45, 15)
for (t in c(30, 60, 76)) say(paste0("level_", t), level(steady, rep(100, 60), t))
one_day <- function(t) steady[2] * exp(-t / steady[4]) - steady[3] * exp(-t / steady[5])
say("recover", uniroot(one_day, c(1, 40), tol = 1e-12)$root)
fall <- function(t) -steady[2] / steady[4] * exp(-t / steady[4]) + steady[3] / steady[5] * exp(-t / steady[5])
say("best", uniroot(fall, c(20, 80), tol = 1e-12)$root)

# 180 days, four sessions a week, every fourth week light; velocity in mph, a typical error of 0.8.
loads <- ifelse((0:179) %% 7 %in% c(0, 1, 3, 4), c(60, 80, 100, 30)[((0:179) %/% 7) %% 4 + 1], 0)
truth <- c(80, 0.0027, 0.0054, 45, 15)
course <- sapply(0:180, function(t) level(truth, loads, t))
say("swing", max(course) - min(course))
for (tests in c(12, 60)) {
  days <- floor(180 * (0:(tests - 1)) / (tests - 1) + 0.5)
  J <- sapply(1:5, function(k) {
    up <- down <- truth
    up[k] <- up[k] * (1 + 1e-5); down[k] <- down[k] * (1 - 1e-5)
    sapply(days, function(t) (level(up, loads, t) - level(down, loads, t)) / 2e-5)
  })
  V <- solve(crossprod(J) / 0.8^2)
  for (k in 2:5) say(paste0("relative_", tests, "_", k), sqrt(V[k, k]))
  say(paste0("gains_", tests), V[2, 3] / sqrt(V[2, 2] * V[3, 3]))
}
