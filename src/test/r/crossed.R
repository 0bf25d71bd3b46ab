# Variances of layers that cross one another: by REML with lme4, their intervals from the criterion itself.

library(lme4)
given("crossed-reml.csv", "set")
crossed <- rows("crossed-data.csv")
wanted <- rows("crossed-reml.csv")
control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12), boundary.tol = 0,
                       check.conv.singular = "ignore", calc.derivs = FALSE)
said <- list()
for (set in wanted$set) {
  data <- crossed[crossed$set == set, ]
  cells <- lapply(data$values, numbers)
  y <- unlist(cells)
  groups <- do.call(rbind, rep(strsplit(as.character(data$groups), ";"), lengths(cells)))
  frame <- data.frame(y = y)
  names <- paste0("layer", seq_len(ncol(groups)))
  for (k in seq_along(names)) frame[[names[k]]] <- factor(groups[, k])
  fit <- lmer(as.formula(paste("y ~ 1 +", paste0("(1|", names, ")", collapse = " + "))), frame, REML = TRUE,
              control = control)
  found <- as.data.frame(VarCorr(fit))
  found <- found$vcov[match(c(names, "Residual"), found$grp)]
  same <- c(lapply(names, function(name) outer(frame[[name]], frame[[name]], "==") + 0), list(diag(length(y))))
  free <- sapply(names, function(name) nlevels(frame[[name]])) - 1
  free <- c(free, length(y) - 1 - sum(free))
  ends <- profile_ends(y, same, found, free)
  said[[set]] <- list(variances = ifelse(found < 1e-9 * max(found), 0, found), low = ends[1, ], high = ends[2, ],
                      mean = fixef(fit)[[1]], error = sqrt(vcov(fit)[1, 1]))
}
check_cells("crossed-reml.csv", "variances", unname(lapply(said, `[[`, "variances")), 1e-5)
check_cells("crossed-reml.csv", "low95", unname(lapply(said, `[[`, "low")), 1e-5)
check_cells("crossed-reml.csv", "high95", unname(lapply(said, `[[`, "high")), 1e-5)
check("crossed-reml.csv", "mean", sapply(said, `[[`, "mean"), 1e-6)
check("crossed-reml.csv", "standardError", sapply(said, `[[`, "error"), 1e-5)
