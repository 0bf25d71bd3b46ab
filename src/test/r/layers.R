# Variances of nested layers: by REML with lme4 and once more from the criterion itself, with its intervals; by moments.

library(lme4)
given("layers-reml.csv", "set")
given("pooled-groups.csv", "set")
layers <- rows("layers-data.csv")
wanted <- rows("layers-reml.csv")
control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12), boundary.tol = 0,
                       check.conv.singular = "ignore", calc.derivs = FALSE)
said <- list()
for (set in wanted$set) {
  data <- layers[layers$set == set, ]
  cells <- lapply(data$values, numbers)
  path <- rep(strsplit(as.character(data$path), ";"), lengths(cells))
  y <- unlist(cells)
  depth <- length(path[[1]])
  frame <- data.frame(y = y)
  for (layer in seq_len(depth)) {
    frame[[paste0("layer", layer)]] <- factor(sapply(path, function(path) paste(path[1:layer], collapse = "/")))
  }
  names <- paste0("layer", seq_len(depth))
  fit <- lmer(as.formula(paste("y ~ 1 +", paste0("(1|", names, ")", collapse = " + "))), frame, REML = TRUE,
              control = control)
  found <- as.data.frame(VarCorr(fit))
  found <- found$vcov[match(c(names, "Residual"), found$grp)]

  # Each layer's matrix of "in the same group", the last one of the values themselves.
  same <- c(lapply(names, function(name) outer(frame[[name]], frame[[name]], "==") + 0), list(diag(length(y))))
  # A layer has as many degrees of freedom as it has groups more than the layer around it.
  free <- diff(c(1, sapply(names, function(name) nlevels(frame[[name]])), length(y)))
  ends <- profile_ends(y, same, found, free)

  # Sums of squares of nested projections, set equal to what is expected of them.
  onto <- function(group) outer(group, group, "==") / as.vector(table(group)[as.character(group)])
  flat <- c(list(matrix(1 / length(y), length(y), length(y))), lapply(names, function(name) onto(frame[[name]])),
            list(diag(length(y))))
  steps <- Map(`-`, flat[-1], flat[-length(flat)])
  expectation <- t(sapply(steps, function(step) sapply(same, function(group) sum(step * group))))
  moments <- solve(expectation, sapply(steps, function(step) sum(y * (step %*% y))))

  # The smallest groups as lme4 draws them; how surely they, and a further group beside each, are known, from the whole matrix.
  V <- Reduce(`+`, Map(`*`, found, same))
  inverse <- solve(V)
  one <- rep(1, length(y))
  mean <- sum(inverse %*% y) / sum(inverse)
  predicted <- function(i, isNext) {
    kept <- seq_len(depth - isNext)
    k <- Reduce(`+`, lapply(kept, function(layer) found[layer] * same[[layer]][i, ]), 0 * one)
    weights <- as.vector(k %*% inverse)
    c(mean + sum(weights * (y - mean)), sqrt(sum(found[seq_len(depth)]) - sum(weights * k) + (1 - sum(weights))^2 / sum(inverse)))
  }
  firsts <- which(!duplicated(frame[[names[depth]]]))
  own <- sapply(firsts, predicted, FALSE)
  beside <- sapply(firsts, predicted, TRUE)

  said[[set]] <- list(variances = found, low = ends[1, ], high = ends[2, ], moments = moments,
                      mean = fixef(fit)[[1]], error = sqrt(vcov(fit)[1, 1]),
                      pooled = fitted(fit)[firsts], ownMean = own[1, ], ownError = own[2, ], nextMean = beside[1, ],
                      nextError = beside[2, ])
}
stopifnot(all.equal(unname(lapply(said, `[[`, "ownMean")), unname(lapply(said, function(set) unname(set$pooled))),
                    tolerance = 1e-6))
# A variance at its bound is 0 in one and next to nothing in the other.
rounded <- function(v) ifelse(v < 1e-9 * max(v), 0, v)
check_cells("layers-reml.csv", "variances", unname(lapply(said, function(set) rounded(set$variances))), 1e-5)
check_cells("layers-reml.csv", "low95", unname(lapply(said, function(set) set$low)), 1e-5)
check_cells("layers-reml.csv", "high95", unname(lapply(said, function(set) set$high)), 1e-5)
check_cells("layers-reml.csv", "byAnova", unname(lapply(said, function(set) set$moments)), 1e-8)
check("layers-reml.csv", "mean", sapply(said, function(set) set$mean), 1e-6)
check("layers-reml.csv", "standardError", sapply(said, function(set) set$error), 1e-5)
check_cells("pooled-groups.csv", "pooled", unname(lapply(said, function(set) unname(set$pooled))), 1e-5)
check_cells("pooled-groups.csv", "pooledError", unname(lapply(said, function(set) set$ownError)), 1e-5)
check_cells("pooled-groups.csv", "next", unname(lapply(said, function(set) set$nextMean)), 1e-5)
check_cells("pooled-groups.csv", "nextError", unname(lapply(said, function(set) set$nextError)), 1e-5)
