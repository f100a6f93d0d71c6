# What R says of the Nile series, for tests/independent_program/trajectory_test.cpp. Base R only; run by: Rscript trajectory.R
# Two ways that share nothing with a filter: dense generalised least squares with a flat level (exact diffuse start), and
# for the maximum-likelihood variances R's own StructTS / tsSmooth.
# Prints one "name value" a line, 12 significant digits.
say <- function(name, value) cat(name, format(as.numeric(value), digits = 14), "\n")

# Level with a flat start at times t; r: error variances; q: drift. at: times wanted. Restricted: (n - 1) log 2 pi.
dense <- function(y, t, r, q, at = t) {
  n <- length(y)
  origin <- min(t)
  V <- q * outer(t - origin, t - origin, pmin) + diag(r, n)
  Vi <- solve(V)
  one <- rep(1, n)
  s <- sum(Vi)                                     # 1' V^-1 1
  m <- sum(Vi %*% y) / s
  C <- q * outer(at - origin, t - origin, pmin)
  mean <- m + C %*% (Vi %*% (y - m))
  left <- 1 - C %*% (Vi %*% one)
  variance <- q * (at - origin) - rowSums((C %*% Vi) * C) + left^2 / s
  quadratic <- sum((y - m) * (Vi %*% (y - m)))
  # first observation diffuse with unit loading: log|V| + log s, as the filter counts it
  loglik <- -0.5 * ((n - 1) * log(2 * pi) + as.numeric(determinant(V)$modulus) + log(s) + quadratic)
  list(mean = as.numeric(mean), variance = as.numeric(variance), loglik = loglik)
}

y <- as.numeric(Nile)
all <- dense(y, 1:100, 15099, 1469.1)
say("loglik", all$loglik)
for (year in c(1871, 1890, 1898, 1899, 1970)) say(paste0("smoothed_", year), all$mean[year - 1870])
for (year in c(1871, 1890, 1970)) say(paste0("variance_", year), all$variance[year - 1870])
for (k in 1:2) say(paste0("filtered_", 1870 + k), dense(y[1:k], 1:k, 15099, 1469.1)$mean[k])

some <- c(1, 2, 3, 6, 10, 11, 18, 31, 32, 56, 57, 58, 59, 81, 100)
few <- dense(y[some], some, 15099, 1469.1)
say("irregular_loglik", few$loglik)
say("irregular_first", few$mean[1])
say("irregular_last", few$mean[15])

held <- setdiff(1:100, c(21:40, 61:80))
gaps <- dense(y[held], held, 15099, 1469.1, at = c(20, 30, 70))
for (i in 1:3) say(paste0("gaps_", c(20, 30, 70)[i]), gaps$mean[i])
say("gaps_variance_30", gaps$variance[2])

V <- 1e5 + 1469.1 * outer(0:99, 0:99, pmin) + diag(15099, 100)
e <- y - 1000
say("proper_loglik", -0.5 * (100 * log(2 * pi) + as.numeric(determinant(V)$modulus) + sum(e * solve(V, e))))

# Each year from all others: the density is refitted without it.
others <- function(i) {
  Vi <- solve(V[-i, -i]); c <- V[i, -i]
  m <- 1000 + c %*% Vi %*% e[-i]; v <- V[i, i] - c %*% Vi %*% c
  c(m, sqrt(v), dnorm(y[i], m, sqrt(v), log = TRUE))
}
left <- sapply(1:100, others)
say("others_mean_1", left[1, 1])
say("others_sd_1", left[2, 1])
say("others_density", sum(left[3, ]))

# Slopes of the log-likelihood at the printed variances, by the trace formula: with P = V^-1 - V^-1 1 1' V^-1 / s,
# (y' P D P y - tr(P D)) / 2, D the derivative of V.
W <- 1469.1 * outer(0:99, 0:99, pmin) + diag(15099, 100)
Wi <- solve(W)
P <- Wi - rowSums(Wi) %o% rowSums(Wi) / sum(Wi)
slope <- function(D) (t(y) %*% P %*% D %*% P %*% y - sum(P * D)) / 2
say("slope_error", slope(diag(1, 100)))
say("slope_drift", slope(outer(0:99, 0:99, pmin)))

# The same likelihood, maximised over both logarithms.
best <- function(y, t) {
  f <- function(p) -dense(y, t, exp(p[1]), exp(p[2]))$loglik
  exp(optim(log(c(10000, 1000)), f, control = list(reltol = 1e-15, maxit = 2000))$par)
}
ml <- best(y, 1:100)
say("ml_error", ml[1])
say("ml_drift", ml[2])
ml <- best(y[held], held)
say("ml_gaps_error", ml[1])
say("ml_gaps_drift", ml[2])

whole <- StructTS(Nile, type = "level")
say("structts_error", whole$coef["epsilon"])
say("structts_drift", whole$coef["level"])
broken <- Nile
broken[c(21:40, 61:80)] <- NA
fit <- StructTS(broken, type = "level")
say("structts_gaps_error", fit$coef["epsilon"])
say("structts_gaps_drift", fit$coef["level"])
say("structts_gaps_30", tsSmooth(fit)[30])
