# What R's posterior 1.4.0 and loo 2.5.1, by the authors of the methods, say of chains and of weights: the values listed in
# samplers_of_r_test.cpp beside this file, which makes the same numbers itself. Run by: Rscript samplers.R. Debian: r-cran-posterior,
# r-cran-loo. Prints one "name value" a line.
suppressPackageStartupMessages({ library(posterior); library(loo) })
say <- function(name, value) cat(name, format(as.numeric(value), digits = 14), "\n")

# Uniform numbers by Lehmer's generator, modulus 2^31 - 1, multiplier 16807: exact in doubles, the same in any language.
uniforms <- function(n, seed) {
  u <- numeric(n)
  seed <- 1234567 * seed
  for (i in seq_len(n)) { seed <- (16807 * seed) %% 2147483647; u[i] <- seed / 2147483647 }
  u
}
# Chains x_t = a x_{t-1} + z_t as columns, the last shifted.
walks <- function(n, chains, a, shift, seed) {
  z <- matrix(qnorm(uniforms(n * chains, seed)), n)
  x <- apply(z, 2, function(e) as.numeric(stats::filter(e, a, "recursive")))
  x[, chains] <- x[, chains] + shift
  x
}
checks <- function(name, x) {
  say(paste0(name, "_r_hat"), rhat(x))
  say(paste0(name, "_bulk"), ess_bulk(x))
  say(paste0(name, "_tail"), ess_tail(x))
  say(paste0(name, "_mean"), ess_mean(x))
  say(paste0(name, "_error"), mcse_mean(x))
}
checks("met", walks(250, 4, 0.6, 0, 11))
checks("apart", walks(250, 4, 0.6, 1.5, 12))
checks("odd", walks(251, 3, 0.3, 0, 13))
checks("to_and_fro", walks(400, 2, -0.5, 0, 14))
checks("one", walks(300, 1, 0.9, 0, 15))
checks("ties", round(walks(200, 4, 0.2, 0, 16), 0))
checks("heavy", tan(pi * (matrix(uniforms(1600, 17), 400) - 0.5)))

weights_of <- function(name, log_ratios) {
  fitted <- suppressWarnings(psis(log_ratios, r_eff = 1))
  w <- as.numeric(weights(fitted, log = FALSE))
  say(paste0(name, "_k"), pareto_k_values(fitted))
  say(paste0(name, "_largest"), max(w))
  say(paste0(name, "_squares"), sum(w^2))
  say(paste0(name, "_first"), w[1])
  say(paste0(name, "_centre"), sum(w * seq_along(w)) / length(w))
}
weights_of("light", -0.3 * log(uniforms(1000, 21)))
weights_of("half", -0.5 * log(uniforms(4000, 22)))
weights_of("past", -0.9 * log(uniforms(4000, 23)))
weights_of("normal", 1.2 * qnorm(uniforms(500, 24)))
weights_of("few", qnorm(uniforms(60, 25)))
weights_of("bounded", log(uniforms(2000, 26)))

tail_of <- function(name, x) {
  fitted <- gpdfit(sort(x), wip = FALSE)
  say(paste0(name, "_shape"), fitted$k)
  say(paste0(name, "_scale"), fitted$sigma)
}
tail_of("exponential", -log(uniforms(300, 31)))
tail_of("pareto", 2 * (uniforms(500, 32)^-0.7 - 1) / 0.7)
tail_of("uniform", uniforms(200, 33))
