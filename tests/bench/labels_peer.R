# Copyright (C) 2026 The Bothways developers
# SPDX-License-Identifier: GPL-3.0-or-later
# The deals of `labels` in vectorised R: 20,000 of 8 among 24 pairs, |t| beside an intercept and a slope.
set.seed(1)
n <- 24; nb <- 8; deals <- 20000
time <- seq_len(n) - (n + 1) / 2
x <- as.numeric(seq_len(n) %in% 9:16)
y <- 2.4 + 0.003 * time + 0.01 * sin(7.3 * seq_len(n)^2)
once <- function() {
  q <- qr(cbind(1, time))
  dealt <- matrix(0, n, deals)
  places <- replicate(deals, sample.int(n, nb))
  dealt[cbind(as.vector(places), rep(seq_len(deals), each = nb))] <- 1
  left <- qr.resid(q, cbind(x, dealt))
  rest <- qr.resid(q, y)
  r2 <- colSums(left * rest)^2 / (colSums(left^2) * sum(rest^2))
  (1 + sum(r2[-1] >= r2[1] * (1 - 1e-9))) / (1 + deals)
}
times <- replicate(5, system.time(once())[["elapsed"]])
cat(1000 * median(times), "\n")
