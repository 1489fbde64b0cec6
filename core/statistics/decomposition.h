// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/statistics/least_squares.h"

#include <Eigen/Dense>

#include <cstddef>
#include <utility>
#include <vector>

/// For the .cpp files of core that go on in Eigen; no other header includes it.
namespace bothways::core {

/// X P = Q R of a model's columns at length 1: Householder QR with column pivoting.
///
/// A model of many days has columns that are zero outside of their day. Decomposed as they stand,
/// the work grows with the cube of the days; here each day's own columns are decomposed alone (a
/// *part*), and the few columns that cross days (the *border*: the effect, the direction, a bend)
/// are decomposed in what is left of them beside the parts. Q is as orthonormal, and the fit as
/// good: it is the elimination of Frisch and Waugh (Econometrica 1 (1933) 387-401) with orthogonal
/// projections. A model of few columns is all border: the plain decomposition.
class Decomposition {
public:
    using Matrix = Eigen::MatrixXd;
    using Vector = Eigen::VectorXd;
    using Index = Eigen::Index;

    /// @param tolerance  as LeastSquaresOptions::tolerance
    Decomposition(const Columns& x, double tolerance);

    [[nodiscard]] Index rank() const { return static_cast<Index>(m_kept.size()); }
    /// The columns that stay, in the order of Q and R.
    [[nodiscard]] const std::vector<std::size_t>& kept() const { return m_kept; }
    /// Of column `kept()[k]`, before it was brought to 1.
    [[nodiscard]] const Vector& lengths() const { return m_lengths; }
    /// Which coefficients the data can tell: those whose row of the null space's basis is zero.
    [[nodiscard]] const std::vector<bool>& estimable() const { return m_estimable; }

    [[nodiscard]] Vector timesQ(const Vector& w) const;           ///< Q w
    [[nodiscard]] Vector timesQTransposed(const Vector& v) const; ///< Q'v
    [[nodiscard]] Vector solveR(const Vector& v) const;           ///< R^-1 v
    [[nodiscard]] Vector solveRTransposed(const Vector& v) const; ///< R'^-1 v
    [[nodiscard]] Vector leverage() const;                        ///< squared lengths of Q's rows
    /// Of the kept columns at length 1: row k of R^-1.
    [[nodiscard]] Vector inverseRow(Index k) const;
    /// (R'R)^-1 of columns at their own lengths, ready for (X'X)^-1 of every pair of columns.
    [[nodiscard]] Covariance covariance(std::size_t columns) const;

private:
    /// Rows of their own, and the columns that are zero outside of them.
    struct Part {
        std::vector<std::size_t> rows, columns;
        Index begin = 0; ///< place of its first kept column
        Matrix q;        ///< rows x rank
        Matrix r;        ///< upper triangle
        Matrix s;        ///< Q'G: rank x kept columns of the border
    };

    void takeParts(const Columns& x, double tolerance);
    void decompose(Part& part, const Columns& x, double tolerance);
    void takeBorder(const Columns& x, double tolerance);
    void markDependent(const Matrix& r, const std::vector<std::size_t>& columns, Index rank,
                       double tolerance);
    [[nodiscard]] Index borderBegin() const { return rank() - m_borderQ.cols(); }

    Index m_n;
    std::vector<Part> m_parts;
    std::vector<std::size_t> m_border; ///< columns
    Matrix m_borderQ, m_borderR;
    std::vector<std::size_t> m_kept;
    Vector m_lengths;
    std::vector<double> m_lengthOf; ///< of every column
    std::vector<bool> m_estimable;
};

} // namespace bothways::core
