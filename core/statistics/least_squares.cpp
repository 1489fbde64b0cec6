// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/least_squares.h"

#include "core/statistics/decomposition.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace bothways::core {
namespace {

using Vector = Decomposition::Vector;
using Index = Decomposition::Index;

std::vector<double> toStd(const Vector& v)
{
    return {v.data(), v.data() + v.size()};
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
                const Decomposition& qr)
{
    const auto n = static_cast<Index>(x.rows());
    std::vector<long double> response(x.rows());
    for (Index i = 0; i < n; ++i)
        response[static_cast<std::size_t>(i)] =
            static_cast<long double>(y[static_cast<std::size_t>(i)]) - solution.residuals(i);
    Defect defect{Vector(n), Vector(qr.rank())};
    for (Index k = 0; k < qr.rank(); ++k) {
        const Columns::Piece piece = x.piece(qr.kept()[static_cast<std::size_t>(k)]);
        long double sum = 0.0L;
        for (std::size_t i = 0; i < piece.values.size(); ++i) {
            const std::size_t row = piece.first + i;
            const auto value = static_cast<long double>(piece.values[i]);
            response[row] -= value * solution.coefficients(k);
            sum += value * solution.residuals(static_cast<Index>(row));
        }
        defect.normal(k) = static_cast<double>(-sum);
    }
    for (Index i = 0; i < n; ++i)
        defect.response(i) = static_cast<double>(response[static_cast<std::size_t>(i)]);
    return defect;
}

/// Two steps of refinement on the augmented system r + X b = y, X'r = 0.
Solution solve(const Columns& x, std::span<const double> y, const Decomposition& qr)
{
    const Vector& length = qr.lengths(); // the decomposition has the columns at length 1
    const Eigen::Map<const Vector> response(y.data(), static_cast<Index>(y.size()));
    const Vector qty = qr.timesQTransposed(response);
    Solution solution{qr.solveR(qty).cwiseQuotient(length), response - qr.timesQ(qty)};
    for (int round = 0; round < 2; ++round) {
        const Defect defect = defectOf(x, y, solution, qr);
        const Vector h = qr.solveRTransposed(defect.normal.cwiseQuotient(length));
        const Vector d = qr.timesQTransposed(defect.response);
        solution.coefficients += qr.solveR(d - h).cwiseQuotient(length);
        solution.residuals += defect.response + qr.timesQ(h - d);
    }
    return solution;
}

double product(std::span<const double> a, std::span<const double> b)
{
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

} // namespace

std::span<double> Columns::add(std::size_t first, std::size_t size)
{
    assert(first + size <= m_rows);
    m_places.push_back({m_values.size(), first, size});
    m_values.resize(m_values.size() + size, 0.0);
    return std::span(m_values).last(size);
}

void Columns::addFrom(const Columns& other, std::size_t j)
{
    assert(other.m_rows == m_rows);
    const Piece piece = other.piece(j);
    std::ranges::copy(piece.values, add(piece.first, piece.values.size()).begin());
}

std::vector<double> Columns::dense() const
{
    std::vector<double> all(m_rows * count(), 0.0);
    for (std::size_t j = 0; j < count(); ++j) {
        const auto at = static_cast<std::ptrdiff_t>(j * m_rows + piece(j).first);
        std::ranges::copy(piece(j).values, all.begin() + at);
    }
    return all;
}

void Covariance::add(std::span<const std::size_t> columns, std::span<const double> own,
                     std::size_t ownSize, std::span<const double> shared)
{
    const std::size_t sharedSize = columns.empty() ? 0 : shared.size() / columns.size();
    for (std::size_t k = 0; k < columns.size(); ++k)
        m_rowOf[columns[k]] = {m_parts, m_own.size() + k * ownSize, ownSize,
                               m_shared.size() + k * sharedSize, sharedSize};
    m_own.insert(m_own.end(), own.begin(), own.end());
    m_shared.insert(m_shared.end(), shared.begin(), shared.end());
    ++m_parts;
}

double Covariance::operator()(std::size_t j, std::size_t k) const
{
    const Row &a = m_rowOf[j], &b = m_rowOf[k];
    if (a.part < 0 || b.part < 0)
        return 0.0;
    const double shared = product(a.in(m_shared, false), b.in(m_shared, false));
    return a.part == b.part ? product(a.in(m_own, true), b.in(m_own, true)) + shared : shared;
}

double LeastSquaresFit::s() const
{
    return df > 0 ? std::sqrt(rss / df) : 0.0;
}

LeastSquaresFit leastSquares(const Columns& x, std::span<const double> y,
                             const LeastSquaresOptions& options)
{
    assert(y.size() == x.rows());
    LeastSquaresFit fit;
    fit.coefficients.assign(x.count(), 0.0);
    if (x.rows() == 0 || x.count() == 0) {
        fit.estimable.assign(x.count(), false);
        fit.covariance = Covariance(x.count());
        fit.df = static_cast<int>(x.rows());
        fit.fitted.assign(y.size(), 0.0);
        fit.residuals.assign(y.begin(), y.end());
        fit.leverage.assign(y.size(), 0.0);
        fit.rss = product(y, y);
        return fit;
    }
    const Decomposition qr(x, options.tolerance);
    fit.rank = static_cast<int>(qr.rank());
    fit.df = static_cast<int>(x.rows()) - fit.rank;
    fit.estimable = qr.estimable();
    const Solution solution = solve(x, y, qr);
    for (Index k = 0; k < qr.rank(); ++k) {
        const std::size_t j = qr.kept()[static_cast<std::size_t>(k)];
        fit.coefficients[j] = solution.coefficients(k);
        if (static_cast<int>(j) == options.weightsOf)
            fit.weights = toStd(qr.timesQ(qr.inverseRow(k)) / qr.lengths()(k));
    }
    const Eigen::Map<const Vector> response(y.data(), static_cast<Index>(y.size()));
    fit.fitted = toStd(response - solution.residuals);
    fit.residuals = toStd(solution.residuals);
    fit.rss = solution.residuals.squaredNorm();
    fit.leverage = toStd(qr.leverage());
    fit.covariance = qr.covariance(x.count());
    return fit;
}

} // namespace bothways::core
