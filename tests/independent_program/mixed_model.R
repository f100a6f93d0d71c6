# What lme4 and nlme say of mixed models, for tests/independent_program/mixed_model_test.cpp. Run by: Rscript mixed_model.R FOLDER
# For each model the rows it was fitted to are written to FOLDER/name.csv, in columns y, x1 ..., z1 ..., group, crossed1 ...,
# and its estimates are printed as lines "name program key value". FOLDER/roster.csv is the test's own simulated roster.
suppressMessages({library(lme4); library(nlme)})
folder <- commandArgs(TRUE)[1]
say <- function(name, program, key, value) cat(name, program, key, format(as.numeric(value), digits = 15), "\n")

# The rows as both sides see them: fixed and random are one-sided formulas, group a name, crossed a list of factors.
write_rows <- function(name, data, y, fixed, random, group, crossed = list()) {
  X <- model.matrix(fixed, data)
  Z <- model.matrix(random, data)
  colnames(X) <- paste0("x", seq_len(ncol(X)))
  colnames(Z) <- paste0("z", seq_len(ncol(Z)))
  rows <- data.frame(y = data[[y]], X, Z, group = as.integer(factor(data[[group]], ordered = FALSE)) - 1)
  for (i in seq_along(crossed)) rows[[paste0("crossed", i)]] <- as.integer(droplevels(crossed[[i]])) - 1
  for (column in names(rows)) if (is.double(rows[[column]])) rows[[column]] <- format(rows[[column]], digits = 17)
  write.csv(rows, file.path(folder, paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
}

# Tighter than the defaults, which stop early on flat optima.
tight <- lmerControl(calc.derivs = FALSE, optimizer = "nloptwrap",
                     optCtrl = list(xtol_abs = 1e-10, ftol_abs = 1e-10, maxeval = 20000), check.conv.singular = "ignore")

# variances: names of the groups as VarCorr calls them, random effects first, then crossed factors.
say_lme4 <- function(name, formula, data, REML, groups) {
  fit <- suppressWarnings(lmer(formula, data, REML = REML, control = tight))
  say(name, "lme4", "criterion", -2 * as.numeric(logLik(fit)))
  for (i in seq_along(fixef(fit))) say(name, "lme4", paste0("beta", i), fixef(fit)[i])
  for (i in seq_along(fixef(fit))) say(name, "lme4", paste0("error", i), sqrt(diag(as.matrix(vcov(fit))))[i])
  sd <- as.data.frame(VarCorr(fit))
  spread <- sd$sdcor[is.na(sd$var2) & sd$grp != "Residual"]
  from <- sd$grp[is.na(sd$var2) & sd$grp != "Residual"]
  i <- 0
  for (g in groups) for (value in spread[from == g]) say(name, "lme4", paste0("sd", i <- i + 1), value)
  say(name, "lme4", "residual", sigma(fit))
}

say_nlme <- function(name, fit) {
  say(name, "nlme", "criterion", -2 * as.numeric(logLik(fit)))
  for (i in seq_along(fixef(fit))) say(name, "nlme", paste0("beta", i), fixef(fit)[i])
  for (i in seq_along(fixef(fit))) say(name, "nlme", paste0("error", i), sqrt(diag(fit$varFix))[i])
  say(name, "nlme", "residual", fit$sigma)
}
firm <- lmeControl(maxIter = 500, msMaxIter = 500, niterEM = 100, tolerance = 1e-10, msTol = 1e-12, opt = "nlminb")

frame <- function(data) { data <- as.data.frame(data); class(data) <- "data.frame"; data }

# A line for each group, intercept and slope together or apart; by both programs.
lines <- function(name, data, y, x, group, REML = TRUE, apart = FALSE) {
  data <- frame(data)
  data$x <- data[[x]]; data$g <- factor(data[[group]], ordered = FALSE)
  write_rows(name, data, y, ~ x, ~ x, "g")
  bar <- if (apart) "(x || g)" else "(x | g)"
  say_lme4(name, as.formula(paste(y, "~ x +", bar)), data, REML, if (apart) c("g", "g.1") else "g")
  random <- if (apart) list(g = pdDiag(~ x)) else list(g = ~ x)
  say_nlme(name, lme(as.formula(paste(y, "~ x")), data, random, method = if (REML) "REML" else "ML", control = firm))
}
levels_only <- function(name, data, y, group, REML = TRUE, second = TRUE) {
  data <- frame(data)
  data$g <- factor(data[[group]], ordered = FALSE)
  write_rows(name, data, y, ~ 1, ~ 1, "g")
  say_lme4(name, as.formula(paste(y, "~ 1 + (1 | g)")), data, REML, "g")
  if (second)
    say_nlme(name, lme(as.formula(paste(y, "~ 1")), data, ~ 1 | g, method = if (REML) "REML" else "ML", control = firm))
}

cat("versions lme4", as.character(packageVersion("lme4")), "0\n")
lines("sleepstudy", sleepstudy, "Reaction", "Days", "Subject")
lines("sleepstudy_full", sleepstudy, "Reaction", "Days", "Subject", REML = FALSE)
lines("sleepstudy_apart", sleepstudy, "Reaction", "Days", "Subject", REML = FALSE, apart = TRUE)
lost <- c(3, 4, 17, 25:28, 51, 90:95, 150, 180)
lines("sleepstudy_lost", sleepstudy[-lost, ], "Reaction", "Days", "Subject")
lines("sleepstudy_lost_full", sleepstudy[-lost, ], "Reaction", "Days", "Subject", REML = FALSE)
lines("orthodont", Orthodont, "distance", "age", "Subject")
lines("oxboys", Oxboys, "height", "age", "Subject")
levels_only("dyestuff", Dyestuff, "Yield", "Batch")
levels_only("dyestuff2", Dyestuff2, "Yield", "Batch", second = FALSE) # nlme cannot reach a variance of 0
levels_only("rail", Rail, "travel", "Rail")

penicillin <- frame(Penicillin)
write_rows("penicillin", penicillin, "diameter", ~ 1, ~ 1, "plate", list(penicillin$sample))
say_lme4("penicillin", diameter ~ 1 + (1 | plate) + (1 | sample), penicillin, TRUE, c("plate", "sample"))

machines <- frame(Machines)
machines$Worker <- factor(machines$Worker, ordered = FALSE)
write_rows("machines", machines, "score", ~ Machine, ~ 1, "Worker", list(machines$Worker:machines$Machine))
say_lme4("machines", score ~ Machine + (1 | Worker) + (1 | Worker:Machine), machines, TRUE, c("Worker", "Worker:Machine"))
say_nlme("machines", lme(score ~ Machine, machines, ~ 1 | Worker / Machine, control = firm))

# The test's own roster: velocity on two qualities, slopes of each athlete's own, sessions and radars crossed with athletes.
roster <- read.csv(file.path(folder, "roster.csv"))
for (name in c("id", "session", "radar")) roster[[name]] <- factor(roster[[name]])
write_rows("roster", roster, "v", ~ a + b, ~ a + b, "id")
say_lme4("roster", v ~ a + b + (a + b || id), roster, TRUE, c("id", "id.1", "id.2"))
say_nlme("roster", lme(v ~ a + b, roster, list(id = pdDiag(~ a + b)), control = firm))
write_rows("roster_together", roster, "v", ~ a + b, ~ a + b, "id")
say_lme4("roster_together", v ~ a + b + (a + b | id), roster, TRUE, "id")
say_nlme("roster_together", lme(v ~ a + b, roster, ~ a + b | id, control = firm))
write_rows("roster_crossed", roster, "v", ~ a + b, ~ 1, "id", list(roster$session, roster$radar))
say_lme4("roster_crossed", v ~ a + b + (1 | id) + (1 | session) + (1 | radar), roster, TRUE, c("id", "session", "radar"))

# Boys' and girls' residuals apart: nlme alone.
by_sex <- lme(distance ~ age * Sex, Orthodont, ~ 1 | Subject, weights = varIdent(form = ~ 1 | Sex), control = firm)
say("by_sex", "nlme", "criterion", -2 * as.numeric(logLik(by_sex)))
say("by_sex", "nlme", "ratio", coef(by_sex$modelStruct$varStruct, unconstrained = FALSE))
say("by_sex", "nlme", "residual", by_sex$sigma)
orthodont <- frame(Orthodont)
orthodont$Subject <- factor(orthodont$Subject, ordered = FALSE)
write_rows("by_sex", orthodont, "distance", ~ age * Sex, ~ 1, "Subject")

# Students' ratings of lectures: 73,421 rows, students, lecturers and departments by service crossed.
write_rows("ratings", InstEval, "y", ~ 1, ~ 1, "s", list(InstEval$d, InstEval$dept:InstEval$service))
say_lme4("ratings", y ~ 1 + (1 | s) + (1 | d) + (1 | dept:service), InstEval, FALSE, c("s", "d", "dept:service"))
