# Rscript repeats.R: the numbers of tests/published_examples/repeats_test.cpp, by R 4.2.2 and psych 2.2.9.
suppressMessages(library(psych))
children <- matrix(c(190,220,200,200, 220,200,240,230, 260,260,240,280, 210,300,280,265, 270,265,280,270, 280,280,270,275,
  260,280,280,300, 275,275,275,305, 280,290,300,290, 320,290,300,290, 300,300,310,300, 270,250,330,370, 320,330,330,330,
  335,320,335,375, 350,320,340,365, 360,320,350,345, 330,340,380,390, 335,385,360,370, 400,420,425,420, 430,460,480,470),
  ncol = 4, byrow = TRUE)
subjects <- matrix(c(9,2,5,8, 6,1,3,2, 8,4,6,8, 7,1,2,6, 10,5,6,9, 6,2,4,7), ncol = 4, byrow = TRUE)
for (table in list(subjects, children)) print(ICC(table, alpha = .20, lmer = FALSE)$results, digits = 8)
limits <- function(df) sqrt(df / qchisq(c(.9, .1), df))
for (df in c(9, 16, 19, 22, 23, 49, 98)) print(c(df, limits(df)), digits = 9)
print(15.361215 * limits(16), digits = 9)
print(qtukey(.95, 2:6, Inf), digits = 7)
uneven <- data.frame(y = c(10,12,13, 20,21, 15,15,18, 30,33, 11,12), row = factor(c(1,1,1, 2,2, 3,3,3, 4,4, 5,5)),
  trial = factor(c(1,2,3, 1,2, 1,2,3, 1,2, 1,2)))
print(summary(lm(y ~ row + trial, uneven)), digits = 9)
print(summary(lm(y ~ row, uneven))$sigma, digits = 9)
# Pooling by a fine grid: log error ~ N(log .03, .5), chi-squared repeats of .05 with 40 df, and of .05 with 3.
for (df in c(40, 3)) {
  x <- seq(log(.03) - 4, log(.03) + 4, length.out = 400001)
  w <- exp(dnorm(x, log(.03), .5, log = TRUE) - df * (x + (.05 / exp(x))^2 / 2)); w <- w / sum(w)
  m <- sum(w * x); s <- sqrt(sum(w * x^2) - m^2); q <- x[findInterval(c(.1, .9), cumsum(w))]
  print(c(exp(m), m, s, exp(q), s^2 / .25), digits = 7)
}
# Ten years of the Nile with a rise of their own: the differences' normal density without 9 / 2 log 2 pi, by dense algebra.
y <- as.numeric(Nile)[c(1, 2, 4, 7, 8, 12, 13, 20, 21, 23)]; t <- c(1, 2, 4, 7, 8, 12, 13, 20, 21, 23)
M <- diff(diag(10)); g <- diff(t)
V <- M %*% (diag(15099, 10) + 1469.1 * outer(t, t, pmin)) %*% t(M) + 400 * g %o% g
d <- diff(y); print(-(as.numeric(determinant(V)$modulus) + sum(d * solve(V, d))) / 2, digits = 14)
