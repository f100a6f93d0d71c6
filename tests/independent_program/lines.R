# What R says of lines through points with errors, for tests/independent_program/lines_test.cpp. Base R only; run by:
# Rscript lines.R. Ways that share nothing with the engine's: minimisation of the misfit itself instead of York's
# iteration, lm() instead of sums, uniroot() instead of Fieller's quadratic, fixed small midpoint steps instead of Runge-Kutta.
# Prints one "name value" a line.
say <- function(name, value) cat(name, format(as.numeric(value), digits = 14), "\n")

# Pearson's points [Pearson1901] with York's weights [York2004], both from memory.
x <- c(0.0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4)
y <- c(5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5)
wx <- c(1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1.0)
wy <- c(1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500)
level <- function(b) { w <- 1 / (1 / wy + b^2 / wx); sum(w * (y - b * x)) / sum(w) }
misfit <- function(b) sum((y - level(b) - b * x)^2 / (1 / wy + b^2 / wx))
b <- optimize(misfit, c(-0.7, -0.3), tol = 1e-12)$minimum
b <- uniroot(function(b) (misfit(b + 1e-5) - misfit(b - 1e-5)) / 2e-5, c(b - 0.01, b + 0.01), tol = 1e-13)$root
say("both_slope", b)
say("both_intercept", level(b))
say("both_misfit", misfit(b))

# Ball masses: 4, 6 and 8 lb, three throws each, 3 % a throw.
m <- c(4, 6, 8) * 0.45359237
v <- c(12.0, 10.5, 9.6)
fit <- lm(log(v) ~ I(log(m / sqrt(m[1] * m[3]))), weights = rep(3 / 0.03^2, 3))
unscaled <- summary(fit)$cov.unscaled
say("balls_slope", coef(fit)[2])
say("balls_slope_error", sqrt(unscaled[2, 2]))
say("balls_level", exp(coef(fit)[1]))
say("balls_level_error", exp(coef(fit)[1]) * sqrt(unscaled[1, 1] + 0.025^2))
# unequal numbers of throws: 5, 2 and 4
few <- lm(log(v) ~ I(log(m / sqrt(m[1] * m[3]))), weights = c(5, 2, 4) / 0.03^2)
say("unequal_slope", coef(few)[2])
say("unequal_slope_error", sqrt(summary(few)$cov.unscaled[2, 2]))

# Loads and speeds.
load <- c(60, 90, 120, 140)
speed <- c(0.95, 0.74, 0.52, 0.38)
line <- lm(speed ~ load)
say("loads_slope", coef(line)[2])
say("loads_max", (0.25 - coef(line)[1]) / coef(line)[2])
say("loads_r_squared", summary(line)$r.squared)
V <- summary(line)$cov.unscaled * 0.04^2
contradicted <- function(L) (sum(coef(line) * c(1, L)) - 0.25)^2 -
  qnorm(0.9)^2 * (c(1, L) %*% V %*% c(1, L) + 0.05^2)
say("loads_low", uniroot(contradicted, c(100, 158), tol = 1e-11)$root)
say("loads_high", uniroot(contradicted, c(158.2, 300), tol = 1e-11)$root)
pairs <- combn(4, 2)
median_slope <- median((speed[pairs[2, ]] - speed[pairs[1, ]]) / (load[pairs[2, ]] - load[pairs[1, ]]))
say("loads_median_slope", median_slope)
say("loads_median_max", (0.25 - median(speed - median_slope * load)) / median_slope)

# A heavy ball through air: where does it land?
lands <- function(v, angle, h, m, d, dt = 2e-5) {
  k <- 1.20 * 0.5 * pi * d^2 / 4 / (2 * m)
  s <- c(0, h); u <- v * c(cos(angle), sin(angle))
  repeat {
    half <- u + dt / 2 * (c(0, -9.80665) - k * sqrt(sum(u^2)) * u)
    next_s <- s + dt * half
    u <- u + dt * (c(0, -9.80665) - k * sqrt(sum(half^2)) * half)
    if (next_s[2] < 0) return(s[1] + (next_s[1] - s[1]) * s[2] / (s[2] - next_s[2]))
    s <- next_s
  }
}
angle <- 40 * pi / 180
say("lands_1kg", lands(12, angle, 1.8, 1, 0.19))
say("lands_4kg", lands(12, angle, 1.8, 4, 0.23))
