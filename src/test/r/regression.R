# Regressors with random outer groups and groups within them: lme4, and what follows from the whole matrix.

library(lme4)
given("pooled-regression-reml.csv", "set", "amounts", "values", "leftOut")
data <- rows("pooled-regression-data.csv")
wanted <- rows("pooled-regression-reml.csv")
said <- list()
for (set in wanted$set) {
  part <- data[data$set == set, ]
  cells <- lapply(part$values, numbers)
  y <- unlist(cells)
  X <- do.call(rbind, lapply(part$amounts, numbers))[rep(seq_along(cells), lengths(cells)), , drop = FALSE]
  colnames(X) <- paste0("x", seq_len(ncol(X)))
  frame <- data.frame(y = y, X, outer = factor(rep(part$outer, lengths(cells))))
  frame$group <- factor(rep(paste(part$outer, part$group), lengths(cells)))
  isNested <- nlevels(frame$group) > nlevels(frame$outer)
  terms <- paste("y ~ 0 +", paste(colnames(X), collapse = " + "), "+ (1|group)", if (isNested) "+ (1|outer)")
  fit <- lmer(as.formula(terms), frame, REML = TRUE,
              control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12), boundary.tol = 0,
                                    check.conv.singular = "ignore", calc.derivs = FALSE))
  found <- as.data.frame(VarCorr(fit))
  v <- c(if (isNested) found$vcov[found$grp == "outer"] else 0, found$vcov[found$grp %in% c("group", "Residual")])
  v[v < 1e-9 * max(v)] <- 0
  same <- list(outer(frame$outer, frame$outer, "==") + 0, outer(frame$group, frame$group, "==") + 0, diag(length(y)))
  V <- function(v) Reduce(`+`, Map(`*`, v, same))
  covariance <- function(v, rows = TRUE) solve(t(X[rows, ]) %*% solve(V(v)[rows, rows], X[rows, ]))
  shares <- function(v, rows = TRUE) {
    as.vector(covariance(v, rows) %*% t(X[rows, ]) %*% solve(V(v)[rows, rows], y[rows]))
  }
  row <- wanted[wanted$set == set, ]
  x0 <- numbers(row$amounts)
  ahead <- function(v) sum(x0 * (covariance(v) %*% x0)) + v[1] + v[2] + v[3] / row$values
  # How surely that variance is known: the curve of the criterion, by differences, in those variances that are not at 0.
  criterion <- function(v) {
    r <- y - X %*% shares(v)
    as.numeric(determinant(V(v))$modulus - determinant(covariance(v))$modulus + t(r) %*% solve(V(v), r))
  }
  free <- which(v > 0)
  step <- v * 1e-3
  moved <- function(i, si, j = i, sj = 0) {
    w <- v
    w[i] <- w[i] + si * step[i]
    w[j] <- w[j] + sj * step[j]
    w
  }
  curve <- outer(free, free, Vectorize(function(i, j) {
    if (i == j) {
      (criterion(moved(i, 1)) - 2 * criterion(v) + criterion(moved(i, -1))) / step[i]^2
    } else {
      (criterion(moved(i, 1, j, 1)) - criterion(moved(i, 1, j, -1)) - criterion(moved(i, -1, j, 1)) +
        criterion(moved(i, -1, j, -1))) / (4 * step[i] * step[j])
    }
  }))
  slope <- sapply(free, function(i) (ahead(moved(i, 1)) - ahead(moved(i, -1))) / (2 * step[i]))
  degrees <- 2 * ahead(v)^2 / as.numeric(t(slope) %*% (2 * solve(curve)) %*% slope)
  # Shares below 0 go to 0; that one at most is below keeps the search short.
  stopifnot(sum(fixef(fit) < 0) <= 1)
  inside <- fixef(fit) >= 0
  bounded <- function(rows = TRUE) {
    b <- numeric(ncol(X))
    Z <- X[rows, inside]
    b[inside] <- solve(t(Z) %*% solve(V(v)[rows, rows], Z), t(Z) %*% solve(V(v)[rows, rows], y[rows]))
    b
  }
  # An outer group left out, variances as they are.
  kept <- frame$outer != row$leftOut
  firsts <- X[which(!kept)[!duplicated(frame$group[!kept])], , drop = FALSE]
  stopifnot(max(abs(fixef(fit)[inside] - shares(v)[inside])) < 1e-4)
  said[[set]] <- list(variances = v, shares = bounded(), errors = sqrt(diag(as.matrix(vcov(fit)))), mean = sum(x0 * bounded()),
                      variance = ahead(v), degrees = degrees, without = as.vector(firsts %*% bounded(kept)))
}
figures <- function(name) unname(lapply(said, `[[`, name))
check_cells("pooled-regression-reml.csv", "variances", figures("variances"), 2e-5)
check_cells("pooled-regression-reml.csv", "shares", figures("shares"), 1e-5)
check_cells("pooled-regression-reml.csv", "standardErrors", lapply(figures("errors"), unname), 1e-5)
check_cells("pooled-regression-reml.csv", "foretoldWithout", figures("without"), 1e-5)
check("pooled-regression-reml.csv", "mean", figures("mean"), 1e-5)
check("pooled-regression-reml.csv", "variance", figures("variance"), 1e-5)
check("pooled-regression-reml.csv", "degreesOfFreedom", figures("degrees"), 2e-3)
