// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/least_squares.h"

#include <Eigen/Dense>

#include <cassert>
#include <cmath>

namespace bothways::core {
namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;
using Index = Eigen::Index;

std::vector<double> toStd(const Vector& v)
{
    return {v.data(), v.data() + v.size()};
}

/// Which coefficients the data can tell: those whose row of the null space's basis is zero.
std::vector<bool> estimableCoefficients(const Eigen::ColPivHouseholderQR<Matrix>& qr, Index rank,
                                        double tolerance)
{
    const Index p = qr.cols();
    std::vector<bool> estimable(static_cast<std::size_t>(p), true);
    if (rank == p)
        return estimable;
    const auto r11 = qr.matrixR().topLeftCorner(rank, rank).triangularView<Eigen::Upper>();
    const Matrix kept = r11.solve(Matrix(qr.matrixR().topRightCorner(rank, p - rank)));
    for (Index k = 0; k < p; ++k) {
        const auto column = static_cast<std::size_t>(qr.colsPermutation().indices()(k));
        estimable[column] = k < rank && kept.row(k).cwiseAbs().maxCoeff() < std::sqrt(tolerance);
    }
    return estimable;
}

struct Solution {
    Vector coefficients; ///< of the kept columns
    Vector residuals;
};

/// What is wrong with a solution, in more digits than it has: y - r - X b and -X'r.
struct Defect {
    Vector response, normal;
};

Defect defectOf(const Columns& x, std::span<const double> y, const Solution& solution,
                const Eigen::ColPivHouseholderQR<Matrix>& qr)
{
    const auto n = static_cast<Index>(x.rows());
    const Index rank = solution.coefficients.size();
    std::vector<long double> response(x.rows());
    for (Index i = 0; i < n; ++i)
        response[static_cast<std::size_t>(i)] =
            static_cast<long double>(y[static_cast<std::size_t>(i)]) - solution.residuals(i);
    Defect defect{Vector(n), Vector(rank)};
    for (Index k = 0; k < rank; ++k) {
        const auto values = x.column(static_cast<std::size_t>(qr.colsPermutation().indices()(k)));
        long double sum = 0.0L;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const auto value = static_cast<long double>(values[i]);
            response[i] -= value * solution.coefficients(k);
            sum += value * solution.residuals(static_cast<Index>(i));
        }
        defect.normal(k) = static_cast<double>(-sum);
    }
    for (Index i = 0; i < n; ++i)
        defect.response(i) = static_cast<double>(response[static_cast<std::size_t>(i)]);
    return defect;
}

/// Two steps of refinement on the augmented system r + X b = y, X'r = 0.
/// @param q       orthonormal basis of the kept columns
/// @param length  of the kept columns, which `qr` has at length 1
Solution solve(const Columns& x, std::span<const double> y, const Matrix& q,
               const Eigen::ColPivHouseholderQR<Matrix>& qr, const Vector& length)
{
    const Index rank = length.size();
    const auto r11 = qr.matrixR().topLeftCorner(rank, rank).triangularView<Eigen::Upper>();
    const Eigen::Map<const Vector> response(y.data(), q.rows());
    const Vector qty = q.transpose() * response;
    Solution solution{Vector(r11.solve(qty)).cwiseQuotient(length), response - q * qty};
    for (int round = 0; round < 2; ++round) {
        const Defect defect = defectOf(x, y, solution, qr);
        const Vector h = r11.transpose().solve(Vector(defect.normal.cwiseQuotient(length)));
        const Vector d = q.transpose() * defect.response;
        solution.coefficients += Vector(r11.solve(Vector(d - h))).cwiseQuotient(length);
        solution.residuals += defect.response + q * (h - d);
    }
    return solution;
}

} // namespace

std::span<double> Columns::add()
{
    ++m_count;
    m_data.resize(m_data.size() + m_rows, 0.0);
    return std::span(m_data).last(m_rows);
}

double LeastSquaresFit::s() const
{
    return df > 0 ? std::sqrt(rss / df) : 0.0;
}

// Long: the steps of one decomposition, which share its matrices.
LeastSquaresFit leastSquares(const Columns& x, std::span<const double> y,
                             const LeastSquaresOptions& options)
{
    assert(y.size() == x.rows());
    const auto n = static_cast<Index>(x.rows());
    const auto p = static_cast<Index>(x.count());
    LeastSquaresFit fit;
    fit.coefficients.assign(x.count(), 0.0);
    fit.covariance.assign(x.count() * x.count(), 0.0);
    fit.estimable.assign(x.count(), false);
    if (n == 0 || p == 0) {
        fit.df = static_cast<int>(n);
        fit.fitted.assign(y.size(), 0.0);
        fit.residuals.assign(y.begin(), y.end());
        fit.leverage.assign(y.size(), 0.0);
        for (const double value : y)
            fit.rss += value * value;
        return fit;
    }

    Matrix scaled = Eigen::Map<const Matrix>(x.data().data(), n, p);
    Vector length = scaled.colwise().norm();
    for (Index j = 0; j < p; ++j)
        if (length(j) > 0.0)
            scaled.col(j) /= length(j);
    const Eigen::Map<const Vector> response(y.data(), n);

    Eigen::ColPivHouseholderQR<Matrix> qr(n, p);
    qr.setThreshold(options.tolerance);
    qr.compute(scaled);
    const Index rank = qr.rank();
    fit.rank = static_cast<int>(rank);
    fit.df = static_cast<int>(n - rank);
    fit.estimable = estimableCoefficients(qr, rank, options.tolerance);

    // The thin Q, then everything from it: coefficients R^-1 Q'y, fitted Q Q'y, leverage |row|^2.
    Matrix q = Matrix::Identity(n, rank);
    q.applyOnTheLeft(qr.householderQ().setLength(rank));
    const auto r11 = qr.matrixR().topLeftCorner(rank, rank).triangularView<Eigen::Upper>();
    const Matrix inverse = r11.solve(Matrix::Identity(rank, rank));
    const auto column = [&](Index k) { return qr.colsPermutation().indices()(k); };
    Vector kept(rank); // lengths of the columns that stay
    for (Index k = 0; k < rank; ++k)
        kept(k) = length(column(k));
    const Solution solution = solve(x, y, q, qr, kept);
    const Matrix covariance = inverse * inverse.transpose();

    for (Index k = 0; k < rank; ++k) {
        const auto j = static_cast<std::size_t>(column(k));
        fit.coefficients[j] = solution.coefficients(k);
        for (Index l = 0; l < rank; ++l)
            fit.covariance[j * x.count() + static_cast<std::size_t>(column(l))] =
                covariance(k, l) / (kept(k) * kept(l));
        if (column(k) == options.weightsOf)
            fit.weights = toStd(q * inverse.row(k).transpose() / kept(k));
    }
    fit.fitted = toStd(response - solution.residuals);
    fit.residuals = toStd(solution.residuals);
    fit.rss = solution.residuals.squaredNorm();
    fit.leverage = toStd(q.rowwise().squaredNorm());
    return fit;
}

} // namespace bothways::core
