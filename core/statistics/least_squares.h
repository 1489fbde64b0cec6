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
    std::span<double> add() { return add(0, m_rows); }
    /// The same for one that is zero but for `size` rows from `first`, which are returned: a model
    /// of many days is mostly such columns.
    std::span<double> add(std::size_t first, std::size_t size);
    [[nodiscard]] std::size_t rows() const { return m_rows; }
    [[nodiscard]] std::size_t count() const { return m_places.size(); }

    /// A column but for the zeros before and behind.
    struct Piece {
        std::size_t first; ///< row
        std::span<const double> values;
    };
    [[nodiscard]] Piece piece(std::size_t j) const
    {
        return {m_places[j].first, std::span(m_values).subspan(m_places[j].at, m_places[j].size)};
    }
    /// Adds a column of another model of as many rows.
    void addFrom(const Columns& other, std::size_t j);
    /// All, one after the other, with their zeros.
    [[nodiscard]] std::vector<double> dense() const;

private:
    struct Place {
        std::size_t at, first, size;
    };
    std::size_t m_rows;
    std::vector<Place> m_places;
    std::vector<double> m_values;
};

/// (X'X)^-1, one number at a time: of a model of many days it is too large to be written down.
class Covariance {
public:
    Covariance() = default;
    explicit Covariance(std::size_t columns) : m_rowOf(columns) {}
    /// Columns of one part of the model. What row k has of its own counts beside rows of the same
    /// call alone, what is shared beside all: the sum of their products is the covariance.
    /// @param own     row by row, `ownSize` each
    /// @param shared  row by row
    void add(std::span<const std::size_t> columns, std::span<const double> own, std::size_t ownSize,
             std::span<const double> shared);
    /// 0 for a column that was not added.
    [[nodiscard]] double operator()(std::size_t j, std::size_t k) const;

private:
    struct Row {
        int part = -1; ///< -1: not added
        std::span<const double> in(const std::vector<double>& values, bool isOwn) const
        {
            return isOwn ? std::span(values).subspan(ownAt, ownSize)
                         : std::span(values).subspan(sharedAt, sharedSize);
        }
        std::size_t ownAt = 0, ownSize = 0, sharedAt = 0, sharedSize = 0;
    };
    std::vector<Row> m_rowOf; ///< by column
    std::vector<double> m_own, m_shared;
    int m_parts = 0;
};

struct LeastSquaresFit {
    std::vector<double> coefficients; ///< 0 where the column was dropped
    std::vector<bool> estimable;      ///< false: the data cannot tell this coefficient from others
    int rank = 0;
    int df = 0;       ///< rows - rank
    double rss = 0.0; ///< residual sum of squares
    std::vector<double> fitted, residuals;
    std::vector<double> leverage; ///< diagonal of the hat matrix
    std::vector<double> weights;  ///< coefficient `weightsOf` = sum of weights[i] y[i]; else empty
    Covariance covariance;

    /// sqrt(rss/df); 0 without degrees of freedom.
    [[nodiscard]] double s() const;
    /// [(X'X)^-1]_jk; 0 for dropped columns
    [[nodiscard]] double cov(std::size_t j, std::size_t k) const { return covariance(j, k); }
};

struct LeastSquaresOptions {
    /// A column counts as dependent when, scaled to length 1, less than this is left of it beside
    /// the others. Loose on purpose: clock times carry 1e-10 of rounding.
    double tolerance = 1e-9;
    int weightsOf = -1; ///< the coefficient whose weights are wanted
};

/// Minimises |y - X b|: Householder QR with column pivoting (Businger & Golub 1965) on columns
/// scaled to length 1, a day's own columns apart where there are many (decomposition.h), never
/// normal equations; two steps of iterative refinement with residuals in
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
