# Computes anew, in R, the figures of src/test/resources/reference/ that were computed and not printed by somebody, and
# accounts for every cell of those files: checked, given (what the figures are computed from), or not checked and why.
# Run from the project's folder: Rscript src/test/r/reference.R [part.R ...]
# Needs R 4.2, lme4 and limma. Ends with status 1 when a figure is off by more than its share, when a cell of a computed file is
# not accounted for, or when anything cannot be computed.

options(warn = 2)
folder <- "src/test/resources/reference"
failures <- character()
fail <- function(...) {
  failures <<- c(failures, paste0(...))
  cat("FAILED  ", ..., "\n", sep = "")
}

# --- The files, and what became of each cell --------------------------------------------------------------------------
book <- list()
open_book <- function(name) {
  if (is.null(book[[name]])) {
    table <- read.csv(file.path(folder, name), comment.char = "#", check.names = FALSE, stringsAsFactors = FALSE,
                      colClasses = "character", na.strings = character())
    book[[name]] <<- list(table = table, state = matrix("", nrow(table), ncol(table), dimnames = list(NULL, names(table))))
  }
  book[[name]]
}

# The table with its columns of numbers as numbers; a blank cell is NA.
rows <- function(name) {
  table <- open_book(name)$table
  table[] <- lapply(table, type.convert, as.is = TRUE, na.strings = "")
  table
}

numbers <- function(cell) as.numeric(strsplit(as.character(cell), ";")[[1]])

mark <- function(name, columns, which, word) {
  entry <- open_book(name)
  unknown <- setdiff(columns, colnames(entry$state))
  if (length(unknown) > 0) stop(name, " has no column ", paste(unknown, collapse = ", "))
  before <- entry$state[which, columns]
  if (any(before != "" & before != word)) stop(name, ": ", paste(columns, collapse = ", "), " is told of twice")
  book[[name]]$state[which, columns] <<- word
}

# Columns that figures are computed from.
given <- function(name, ...) mark(name, c(...), TRUE, "given")

# Figures that this script does not compute, and why.
not_checked <- function(name, columns, why, which = TRUE) mark(name, columns, which, paste("not checked:", why))

off_by <- function(filed, computed, absolute) {
  size <- if (absolute) 1 else pmax(abs(computed), 1e-300)
  max(ifelse(filed == computed, 0, abs(filed - computed) / size))
}

compare <- function(label, filed, computed, at_most, absolute = FALSE) {
  filed <- suppressWarnings(as.numeric(filed)) # what is no number is counted below
  computed <- as.numeric(unlist(computed))
  if (length(filed) == 0 || length(filed) != length(computed)) {
    return(fail(label, ": ", length(filed), " figures filed, but ", length(computed), " computed"))
  }
  if (anyNA(filed) || anyNA(computed)) {
    return(fail(label, ": ", sum(is.na(filed) | is.na(computed)), " figures could not be compared"))
  }
  off <- off_by(filed, computed, absolute)
  cat(sprintf("%-58s %4d figures, off by at most %.1e%s\n", label, length(filed), off, if (absolute) " absolute" else ""))
  if (off > at_most) {
    worst <- which.max(abs(filed - computed))
    fail(label, ": off by ", format(off), ", more than ", at_most, "; e.g. figure ", worst, " is ", filed[worst],
         ", R says ", format(computed[worst], digits = 12))
  }
}

# Compares a column, or its rows `which`, with what R says of those rows. A blank cell says nothing.
check <- function(name, column, computed, at_most, which = TRUE, absolute = FALSE) {
  filed <- rows(name)[which, column]
  kept <- !is.na(filed)
  computed <- unlist(computed)
  if (length(filed) != length(computed)) {
    return(fail(name, " ", column, ": ", length(filed), " rows, but ", length(computed), " computed"))
  }
  mark(name, column, which, "checked")
  compare(paste(name, column), filed[kept], computed[kept], at_most, absolute)
}

# Compares cells that hold several numbers each.
check_cells <- function(name, column, computed, at_most, which = TRUE) {
  filed <- open_book(name)$table[which, column]
  if (length(filed) != length(computed)) {
    return(fail(name, " ", column, ": ", length(filed), " rows, but ", length(computed), " computed"))
  }
  mark(name, column, which, "checked")
  kept <- filed != ""
  if (!identical(lengths(lapply(filed[kept], numbers)), lengths(computed[kept]))) {
    return(fail(name, " ", column, ": the cells hold other counts of numbers than R computes"))
  }
  compare(paste(name, column), unlist(lapply(filed[kept], numbers)), unlist(computed[kept]), at_most)
}

# --- What several parts compute with ----------------------------------------------------------------------------------
# The points and weights of Gauss and Legendre.
legendre <- function(count, low, high) {
  i <- seq_len(count - 1)
  side <- i / sqrt(4 * i^2 - 1)
  matrix <- matrix(0, count, count)
  matrix[cbind(i, i + 1)] <- side
  matrix[cbind(i + 1, i)] <- side
  parts <- eigen(matrix, symmetric = TRUE)
  list(at = (parts$values + 1) / 2 * (high - low) + low, weight = parts$vectors[1, ]^2 * (high - low))
}

# The probability that the range of n normal values is below w: n int phi(x) (Phi(x + w) - Phi(x))^(n - 1) dx.
range_below <- function(w, n) {
  n * integrate(function(x) dnorm(x) * (pnorm(x + w) - pnorm(x))^(n - 1), -9, 9, rel.tol = 1e-10)$value
}

# The ends of the 95 % intervals of variances by the profile of the REML criterion, worked out from the whole matrix; the rise
# by which an end is told is that of nine tenths of the chance, with Bartlett's factor for as many degrees of freedom as given.
profile_ends <- function(y, same, found, free) {
  criterion <- function(v) {
    root <- tryCatch(chol(Reduce(`+`, Map(`*`, v, same))), error = function(e) NULL)
    if (is.null(root)) return(1e10)
    one <- backsolve(root, rep(1, length(y)), transpose = TRUE)
    z <- backsolve(root, y, transpose = TRUE)
    mean <- sum(one * z) / sum(one^2)
    2 * sum(log(diag(root))) + log(sum(one^2)) + sum((z - mean * one)^2)
  }
  best <- criterion(found)
  # The least of the criterion with one variance held, the others free from 0 up, on the scale of standard deviations.
  held <- function(k, value) {
    start <- sqrt(pmax(found[-k], var(y) / 1000))
    nlminb(start, function(others) {
      v <- numeric(length(found))
      v[k] <- value
      v[-k] <- others^2
      criterion(v)
    }, lower = 0, control = list(rel.tol = 1e-13, x.tol = 1e-10))$objective
  }
  rises <- qchisq(1 - 0.9 * 0.05, 1) * free * (log(free / 2) - digamma(free / 2))
  sapply(seq_along(found), function(k) {
    above <- function(value) held(k, value) - best - rises[k]
    high <- max(found[k], var(y) / 10)
    while (above(high) < 0) high <- high * 2
    lowest <- if (k == length(found)) found[k] / 100 else 0
    low <- if (found[k] <= lowest || above(lowest) <= 0) 0 else uniroot(above, c(lowest, found[k]), tol = found[k] * 1e-9)$root
    c(low, uniroot(above, c(found[k], high), tol = high * 1e-9)$root)
  })
}

# --- The parts --------------------------------------------------------------------------------------------------------
every_part <- setdiff(list.files("src/test/r", "[.]R$"), "reference.R")
parts <- if (length(commandArgs(TRUE)) > 0) commandArgs(TRUE) else every_part
if (!all(parts %in% every_part)) fail("no such part: ", paste(setdiff(parts, every_part), collapse = ", "))
for (part in intersect(parts, every_part)) {
  cat("\n== ", part, "\n", sep = "")
  tryCatch(sys.source(file.path("src/test/r", part), new.env(parent = globalenv())),
           error = function(e) fail(part, " stopped: ", conditionMessage(e)))
}

# --- The account ------------------------------------------------------------------------------------------------------
cat("\n== What is not checked\n")
for (name in list.files(folder)) {
  head <- grep("^#", readLines(file.path(folder, name)), value = TRUE)
  state <- open_book(name)$state
  computed <- grep("^# computed:", head, value = TRUE)
  if (length(computed) == 0) {
    read <- sub("^# read: *", "", grep("^# read:", head, value = TRUE))
    cat(sprintf("%-44s %s, as its source prints it%s\n", name, read, if (any(state == "checked")) "; partly checked" else ""))
    next
  }
  if (!(basename(computed) %in% every_part)) fail(name, ": there is no such script: ", computed)
  if (!(basename(computed) %in% parts)) next
  filled <- state[open_book(name)$table != ""]
  if (any(filled == "")) {
    silent <- colnames(state)[colSums(state == "" & open_book(name)$table != "") > 0]
    fail(name, ": neither checked nor given nor said to be unchecked: ", paste(silent, collapse = ", "))
  }
  if (!any(filled == "checked")) fail(name, ": says it is computed, and nothing of it is checked")
  for (word in unique(filled[grepl("^not checked", filled)])) {
    columns <- colnames(state)[colSums(state == word) > 0]
    cat(sprintf("%-44s %s: %s\n", name, paste(columns, collapse = ", "), sub("not checked: ", "", word)))
  }
}
stale <- setdiff(names(book), list.files(folder))
if (length(stale) > 0) fail("no such files: ", paste(stale, collapse = ", "))

checked <- sum(unlist(lapply(book, function(entry) entry$state == "checked" & entry$table != "")))
cat("\n", R.version.string, ": ", checked, " cells checked\n", sep = "")
if (length(failures) > 0) {
  cat(length(failures), " failures:\n", paste0("  ", failures, "\n"), sep = "")
  quit(status = 1)
}
