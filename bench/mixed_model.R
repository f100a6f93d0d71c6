# Rscript mixed_model.R FILE.csv: lme4's fit of the same mixed models to the same rows; prints model, user seconds, criterion.
# Columns: id, session, v, w1 ... w6 (from the athlete's mean), b1 ... b6 (the means).
suppressMessages(library(lme4))
d <- read.csv(commandArgs(TRUE)[1])
d$id <- factor(d$id)
d$session <- factor(d$session)
w <- paste0("w", 1:6, collapse = "+")
fixed <- paste("v ~", w, "+", paste0("b", 1:6, collapse = "+"))
models <- list(level = paste(fixed, "+ (1|id)"), level_session = paste(fixed, "+ (1|id) + (1|session)"),
               slopes = paste(fixed, "+ (1+", w, "||id)"),
               slopes_session = paste(fixed, "+ (1+", w, "||id) + (1|session)"))
for (name in names(models)) {
  before <- proc.time()
  fit <- suppressWarnings(lmer(as.formula(models[[name]]), d, REML = TRUE, control = lmerControl(calc.derivs = FALSE)))
  used <- proc.time() - before
  cat(sprintf("%s %.4f %.6f\n", name, used[1] + used[2], REMLcrit(fit)))
}
