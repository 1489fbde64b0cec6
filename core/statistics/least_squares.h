// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

/// Linear least squares that admits when its columns depend on one another.
namespace bothways::core {

/// The columns of a model, all of one length; an intercept is a column of ones like any other.
class Columns {
public:
    explicit Columns(std::size_t rows) : m_rows(rows) {}
    /// A new column of zeros, to be filled by the caller before the next add().
    std::span<double> add();
    [[nodiscard]] std::size_t rows() const { return m_rows; }
    [[nodiscard]] std::size_t count() const
    {
        return m_rows == 0 ? m_count : m_data.size() / m_rows;
    }
    [[nodiscard]] std::span<const double> column(std::size_t j) const
    {
        return std::span(m_data).subspan(j * m_rows, m_rows);
    }
    [[nodiscard]] const std::vector<double>& data() const { return m_data; } ///< column by column

private:
    std::size_t m_rows;
    std::size_t m_count = 0;
    std::vector<double> m_data;
};

struct LeastSquaresFit {
    std::vector<double> coefficients; ///< 0 where the column was dropped
    std::vector<bool> estimable;      ///< false: the data cannot tell this coefficient from others
    int rank = 0;
    int df = 0;       ///< rows - rank
    double rss = 0.0; ///< residual sum of squares
    std::vector<double> fitted, residuals;
    std::vector<double> leverage;   ///< diagonal of the hat matrix
    std::vector<double> covariance; ///< (X'X)^-1, row by row; zeros for dropped columns
    std::vector<double> weights; ///< coefficient `weightsOf` = sum of weights[i] y[i]; else empty

    /// sqrt(rss/df); 0 without degrees of freedom.
    [[nodiscard]] double s() const;
    /// [(X'X)^-1]_jk
    [[nodiscard]] double cov(std::size_t j, std::size_t k) const
    {
        return covariance[j * coefficients.size() + k];
    }
};

struct LeastSquaresOptions {
    /// A column counts as dependent when, scaled to length 1, less than this is left of it beside
    /// the others. Loose on purpose: clock times carry 1e-10 of rounding.
    double tolerance = 1e-9;
    int weightsOf = -1; ///< the coefficient whose weights are wanted
};

/// Minimises |y - X b|: Householder QR with column pivoting (Businger & Golub 1965) on columns
/// scaled to length 1, never normal equations; two steps of iterative refinement with residuals in
/// extended precision (A. Bjorck, "Iterative refinement of linear least squares solutions", BIT 7
/// (1967) 257-278). Columns of time must come centred. Digits reached on NIST's data sets:
/// tests/published/nist_regression_test.cpp.
///
/// Every size is allowed, more columns than rows and no rows included. A coefficient is `estimable`
/// when its unit vector is orthogonal to the null space of X; the fitted values, residuals, rank
/// and df are right whatever the rank. Numbers that are not finite give numbers that are not
/// finite.
[[nodiscard]] LeastSquaresFit leastSquares(const Columns& x, std::span<const double> y,
                                           const LeastSquaresOptions& options = {});

} // namespace bothways::core
