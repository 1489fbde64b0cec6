# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
# Digits that lm() shares with NIST's certified regressions. Argument: folder of the data.
folder <- commandArgs(TRUE)[1]
certified <- read.csv(file.path(folder, "certified.csv"), colClasses = "character")
value <- function(set, what)
  as.numeric(certified$value[certified$dataset == set & certified$quantity == what])
digits <- function(x, c) if (is.na(x)) 0 else max(0, min(15, -log10(if (c == 0) abs(x) else abs(x - c) / abs(c))))
set <- function(name, degree, intercept) {
  data <- read.csv(file.path(folder, paste0(name, ".csv")))
  x <- if (degree > 0) sapply(seq_len(degree), function(k) data$x^k) else as.matrix(data[, -1])
  index <- seq_len(ncol(x))
  if (intercept) { x <- cbind(1, x); index <- c(0, index) }
  fit <- lm(data$y ~ 0 + x, tol = 1e-10) # the default, 1e-7, gives up on Filip
  found <- suppressWarnings(summary(fit))
  b <- mapply(function(x, i) digits(x, value(name, paste0("B", i))), coef(fit), index)
  cat(name, min(b), digits(found$sigma, value(name, "residual_sd")), "\n")
}
set("Norris", 1, TRUE); set("Pontius", 2, TRUE); set("NoInt1", 1, FALSE); set("NoInt2", 1, FALSE)
set("Filip", 10, TRUE); for (k in 1:5) set(paste0("Wampler", k), 5, TRUE); set("Longley", 0, TRUE)
