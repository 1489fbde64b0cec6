// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/decomposition.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bothways::core {
namespace {

using Matrix = Decomposition::Matrix;
using Vector = Decomposition::Vector;
using Index = Decomposition::Index;
using Qr = Eigen::ColPivHouseholderQR<Matrix>;

/// With fewer columns than these parts save nothing worth having.
constexpr std::size_t kFewColumns = 24;
/// A column that fills a larger share of the rows crosses days.
constexpr std::size_t kShareOfADay = 4;

auto upper(const Matrix& r)
{
    return r.triangularView<Eigen::Upper>();
}

Matrix thinQ(const Qr& qr, Index rank)
{
    Matrix q = Matrix::Identity(qr.rows(), rank);
    q.applyOnTheLeft(qr.householderQ().setLength(rank));
    return q;
}

std::vector<std::size_t> inPivotOrder(const Qr& qr, const std::vector<std::size_t>& columns)
{
    std::vector<std::size_t> ordered;
    for (Index k = 0; k < qr.cols(); ++k)
        ordered.push_back(columns[static_cast<std::size_t>(qr.colsPermutation().indices()(k))]);
    return ordered;
}

/// Rows that columns which are not of the border tie together, each group in order.
std::vector<std::vector<std::size_t>> tiedRows(const Columns& x, const std::vector<bool>& isBorder)
{
    std::vector<std::size_t> up(x.rows());
    std::iota(up.begin(), up.end(), std::size_t{0});
    const auto top = [&](std::size_t row) {
        while (up[row] != row)
            row = up[row] = up[up[row]];
        return row;
    };
    for (std::size_t j = 0; j < x.count(); ++j) {
        const Columns::Piece piece = x.piece(j);
        for (std::size_t i = 1; !isBorder[j] && i < piece.values.size(); ++i)
            up[top(piece.first + i)] = top(piece.first);
    }
    std::vector<std::vector<std::size_t>> groups;
    std::vector<std::size_t> groupOf(x.rows(), x.rows());
    for (std::size_t row = 0; row < x.rows(); ++row) {
        std::size_t& group = groupOf[top(row)];
        if (group == x.rows()) {
            group = groups.size();
            groups.emplace_back();
        }
        groups[group].push_back(row);
    }
    return groups;
}

} // namespace

Decomposition::Decomposition(const Columns& x, double tolerance)
    : m_n(static_cast<Index>(x.rows())), m_estimable(x.count(), true)
{
    for (std::size_t j = 0; j < x.count(); ++j) {
        const auto values = x.piece(j).values;
        m_lengthOf.push_back(
            Eigen::Map<const Vector>(values.data(), static_cast<Index>(values.size())).norm());
    }
    takeParts(x, tolerance);
    takeBorder(x, tolerance);
    m_lengths.resize(rank());
    for (Index k = 0; k < rank(); ++k)
        m_lengths(k) = m_lengthOf[m_kept[static_cast<std::size_t>(k)]];
}

void Decomposition::takeParts(const Columns& x, double tolerance)
{
    std::vector<bool> isBorder(x.count(), true);
    if (x.count() >= kFewColumns)
        for (std::size_t j = 0; j < x.count(); ++j)
            isBorder[j] = x.piece(j).values.size() * kShareOfADay > x.rows();
    for (std::size_t j = 0; j < x.count(); ++j)
        if (isBorder[j])
            m_border.push_back(j);
    if (m_border.size() == x.count())
        return;
    std::vector<std::size_t> partOf(x.rows());
    for (auto& rows : tiedRows(x, isBorder)) {
        for (const std::size_t row : rows)
            partOf[row] = m_parts.size();
        m_parts.emplace_back();
        m_parts.back().rows = std::move(rows);
    }
    for (std::size_t j = 0; j < x.count(); ++j)
        if (!isBorder[j])
            m_parts[partOf[x.piece(j).first]].columns.push_back(j);
    std::erase_if(m_parts, [](const Part& part) { return part.columns.empty(); });
    for (Part& part : m_parts)
        decompose(part, x, tolerance);
}

void Decomposition::decompose(Part& part, const Columns& x, double tolerance)
{
    Matrix scaled =
        Matrix::Zero(static_cast<Index>(part.rows.size()), static_cast<Index>(part.columns.size()));
    for (std::size_t k = 0; k < part.columns.size(); ++k) {
        const Columns::Piece piece = x.piece(part.columns[k]);
        const double length = m_lengthOf[part.columns[k]];
        auto row = std::ranges::lower_bound(part.rows, piece.first) - part.rows.begin();
        for (const double value : piece.values) // its rows are of this part, all of them
            scaled(row++, static_cast<Index>(k)) = length > 0.0 ? value / length : value;
    }
    Qr qr(scaled.rows(), scaled.cols());
    qr.setThreshold(tolerance);
    qr.compute(scaled);
    const Index rank = qr.rank();
    const std::vector<std::size_t> ordered = inPivotOrder(qr, part.columns);
    markDependent(qr.matrixR(), ordered, rank, tolerance);
    part.begin = this->rank();
    part.q = thinQ(qr, rank);
    part.r = qr.matrixR().topLeftCorner(rank, rank);
    m_kept.insert(m_kept.end(), ordered.begin(), ordered.begin() + rank);
}

/// Of columns that were decomposed with each other, in the order of their pivots.
void Decomposition::markDependent(const Matrix& r, const std::vector<std::size_t>& columns,
                                  Index rank, double tolerance)
{
    const auto p = static_cast<Index>(columns.size());
    if (rank == p)
        return;
    const Matrix shares = r.topLeftCorner(rank, rank)
                              .triangularView<Eigen::Upper>()
                              .solve(Matrix(r.topRightCorner(rank, p - rank)));
    for (Index k = 0; k < p; ++k)
        if (k >= rank || !(shares.row(k).cwiseAbs().maxCoeff() < std::sqrt(tolerance)))
            m_estimable[columns[static_cast<std::size_t>(k)]] = false;
}

void Decomposition::takeBorder(const Columns& x, double tolerance)
{
    const auto p = static_cast<Index>(m_border.size());
    Matrix left = Matrix::Zero(m_n, p);
    for (Index k = 0; k < p; ++k) {
        const std::size_t j = m_border[static_cast<std::size_t>(k)];
        const Columns::Piece piece = x.piece(j);
        for (std::size_t i = 0; i < piece.values.size(); ++i)
            left(static_cast<Index>(piece.first + i), k) =
                m_lengthOf[j] > 0.0 ? piece.values[i] / m_lengthOf[j] : piece.values[i];
    }
    for (Part& part : m_parts) {
        part.s = Matrix::Zero(part.q.cols(), p);
        Matrix rows(part.q.rows(), p);
        for (std::size_t i = 0; i < part.rows.size(); ++i)
            rows.row(static_cast<Index>(i)) = left.row(static_cast<Index>(part.rows[i]));
        for (int pass = 0; pass < 2; ++pass) { // the second takes away what the first rounded
            const Matrix share = part.q.transpose() * rows;
            rows -= part.q * share;
            part.s += share;
        }
        for (std::size_t i = 0; i < part.rows.size(); ++i)
            left.row(static_cast<Index>(part.rows[i])) = rows.row(static_cast<Index>(i));
    }
    if (p == 0) {
        m_borderQ.resize(m_n, 0);
        return;
    }
    Qr qr(m_n, p);
    qr.setThreshold(tolerance);
    qr.compute(left);
    Index rank = qr.rank();
    if (!m_parts.empty()) // what is left of a column of length 1 counts, not of the longest
        rank = (qr.matrixR().diagonal().cwiseAbs().array() > tolerance).count();
    const std::vector<std::size_t> ordered = inPivotOrder(qr, m_border);
    markDependent(qr.matrixR(), ordered, rank, tolerance);
    m_borderQ = thinQ(qr, rank);
    m_borderR = qr.matrixR().topLeftCorner(rank, rank);
    for (Part& part : m_parts) {
        const Matrix s = part.s * qr.colsPermutation();
        part.s = s.leftCols(rank);
        if (rank == p)
            continue;
        const Matrix shares =
            upper(m_borderR).solve(Matrix(qr.matrixR().topRightCorner(rank, p - rank)));
        const Matrix own = upper(part.r).solve(Matrix(s.rightCols(p - rank) - part.s * shares));
        for (Index k = 0; k < own.rows(); ++k)
            if (!(own.row(k).cwiseAbs().maxCoeff() < std::sqrt(tolerance)))
                m_estimable[m_kept[static_cast<std::size_t>(part.begin + k)]] = false;
    }
    m_kept.insert(m_kept.end(), ordered.begin(), ordered.begin() + rank);
}

Vector Decomposition::timesQ(const Vector& w) const
{
    Vector v = m_borderQ * w.tail(m_borderQ.cols());
    for (const Part& part : m_parts) {
        const Vector own = part.q * w.segment(part.begin, part.q.cols());
        for (std::size_t i = 0; i < part.rows.size(); ++i)
            v(static_cast<Index>(part.rows[i])) += own(static_cast<Index>(i));
    }
    return v;
}

Vector Decomposition::timesQTransposed(const Vector& v) const
{
    Vector w(rank());
    w.tail(m_borderQ.cols()) = m_borderQ.transpose() * v;
    for (const Part& part : m_parts) {
        Vector own(part.q.rows());
        for (std::size_t i = 0; i < part.rows.size(); ++i)
            own(static_cast<Index>(i)) = v(static_cast<Index>(part.rows[i]));
        w.segment(part.begin, part.q.cols()) = part.q.transpose() * own;
    }
    return w;
}

Vector Decomposition::solveR(const Vector& v) const
{
    const Index border = m_borderQ.cols();
    Vector b(rank());
    b.tail(border) = upper(m_borderR).solve(v.tail(border));
    for (const Part& part : m_parts)
        b.segment(part.begin, part.q.cols()) = upper(part.r).solve(
            Vector(v.segment(part.begin, part.q.cols()) - part.s * b.tail(border)));
    return b;
}

Vector Decomposition::solveRTransposed(const Vector& v) const
{
    const Index border = m_borderQ.cols();
    Vector z(rank());
    Vector left = v.tail(border);
    for (const Part& part : m_parts) {
        const Vector own = part.r.transpose().triangularView<Eigen::Lower>().solve(
            Vector(v.segment(part.begin, part.q.cols())));
        z.segment(part.begin, part.q.cols()) = own;
        left -= part.s.transpose() * own;
    }
    z.tail(border) = m_borderR.transpose().triangularView<Eigen::Lower>().solve(left);
    return z;
}

Vector Decomposition::leverage() const
{
    Vector sum = m_borderQ.rowwise().squaredNorm();
    for (const Part& part : m_parts)
        for (std::size_t i = 0; i < part.rows.size(); ++i)
            sum(static_cast<Index>(part.rows[i])) +=
                part.q.row(static_cast<Index>(i)).squaredNorm();
    return sum;
}

Vector Decomposition::inverseRow(Index k) const
{
    return solveRTransposed(Vector::Unit(rank(), k));
}

Covariance Decomposition::covariance(std::size_t columns) const
{
    Covariance result(columns);
    const Index border = m_borderQ.cols();
    const Matrix borderInverse =
        border > 0 ? Matrix(upper(m_borderR).solve(Matrix::Identity(border, border))) : Matrix();
    const auto put = [&](Index begin, const Matrix& own, const Matrix& shared) {
        const auto size = static_cast<std::size_t>(shared.rows());
        std::vector<std::size_t> names;
        std::vector<double> ownRows, sharedRows;
        for (Index k = 0; k < shared.rows(); ++k) {
            names.push_back(m_kept[static_cast<std::size_t>(begin + k)]);
            const double length = m_lengths(begin + k);
            for (Index l = 0; l < own.cols(); ++l)
                ownRows.push_back(own(k, l) / length);
            for (Index l = 0; l < border; ++l)
                sharedRows.push_back(shared(k, l) / length);
        }
        result.add(names, ownRows, size == 0 ? 0 : ownRows.size() / size, sharedRows);
    };
    for (const Part& part : m_parts) {
        const Matrix own = upper(part.r).solve(Matrix::Identity(part.r.rows(), part.r.cols()));
        put(part.begin, own,
            border > 0 ? Matrix(-own * part.s * borderInverse) : Matrix(part.r.rows(), 0));
    }
    put(borderBegin(), Matrix(border, 0), borderInverse);
    return result;
}

} // namespace bothways::core
