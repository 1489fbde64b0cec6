// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/field_grid.h"

#include <QWidget>

#include <algorithm>
#include <numeric>

namespace bothways::app {
namespace {

constexpr int kMostColumns = 4;
constexpr int kFewestColumns = 2;

int leastWidth(const QWidget* widget)
{
    if (!widget || widget->isHidden())
        return 0;
    return std::max(widget->minimumSizeHint().width(), widget->minimumWidth());
}

} // namespace

FieldGrid::FieldGrid(QWidget* parent) : QGridLayout(parent) {}

void FieldGrid::beginSection(QWidget* heading)
{
    m_sections.push_back({heading, {}});
    m_now = {0, false};
}

void FieldGrid::addField(QWidget* label, QWidget* editor, int span)
{
    m_sections.back().fields.push_back({label, editor, span});
    m_now = {0, false};
}

std::vector<FieldGrid::Place> FieldGrid::placesOf(const Section& section, int columns)
{
    std::vector<Place> places;
    int row = 0, column = 1;
    for (const Field& field : section.fields) {
        if (column + field.span > columns + 1) {
            ++row;
            column = 1;
        }
        places.push_back({row, column});
        column += field.span;
    }
    return places;
}

int FieldGrid::needed(Arrangement arrangement) const
{
    const auto& [columns, headings] = arrangement;
    const int gap = horizontalSpacing();
    std::vector<int> widths(static_cast<std::size_t>(columns) + 1, 0);
    for (const bool wide : {false, true}) // first each for itself, then those that take several
        for (const Section& section : m_sections) {
            if (headings)
                widths[0] = std::max(widths[0], section.heading->minimumSizeHint().width());
            const std::vector<Place> places = placesOf(section, columns);
            for (std::size_t i = 0; i < places.size(); ++i) {
                const Field& field = section.fields[i];
                if ((field.span > 1) != wide)
                    continue;
                const int wanted = std::max(leastWidth(field.label), leastWidth(field.editor));
                const auto first = widths.begin() + places[i].column;
                const auto end = first + field.span;
                const int had = std::accumulate(first, end, gap * (field.span - 1));
                *(end - 1) += std::max(0, wanted - had);
            }
        }
    const QMargins around = contentsMargins();
    return std::accumulate(widths.begin(), widths.end(), gap * (headings ? columns : columns - 1)) +
           around.left() + around.right();
}

void FieldGrid::arrange(Arrangement arrangement)
{
    m_now = arrangement;
    while (QLayoutItem* item = takeAt(0))
        delete item;
    const int shift = arrangement.headings ? 0 : -1;
    for (int column = 0; column <= kMostColumns; ++column)
        setColumnStretch(column, column >= 1 + shift && column <= arrangement.columns + shift);
    int row = 0; // one of labels, and one of editors
    for (const Section& section : m_sections) {
        if (arrangement.headings)
            addWidget(section.heading, row, 0);
        const std::vector<Place> places = placesOf(section, arrangement.columns);
        for (std::size_t i = 0; i < places.size(); ++i) {
            const Field& field = section.fields[i];
            const int down = row + 2 * places[i].row, column = places[i].column + shift;
            addWidget(field.label, down, column, 1, field.span);
            addWidget(field.editor, down + 1, column, 1, field.span);
        }
        row += places.empty() ? 2 : 2 * (places.back().row + 1);
    }
    for (const Section& section : m_sections) // last: what is shown lays out, and may turn, at once
        section.heading->setVisible(m_now.headings);
}

/// Asked how high it is, a layout may have to turn, as when it is placed.
void FieldGrid::arrangeFor(int width) const
{
    Arrangement wanted{kMostColumns, true};
    if (needed(wanted) > width)
        wanted.headings = false;
    while (wanted.columns > kFewestColumns && needed(wanted) > width)
        --wanted.columns;
    if (wanted != m_now)
        const_cast<FieldGrid*>(this)->arrange(wanted);
}

void FieldGrid::setGeometry(const QRect& rect)
{
    arrangeFor(rect.width());
    QGridLayout::setGeometry(rect);
}

QSize FieldGrid::minimumSize() const
{
    return {needed({kFewestColumns, false}), QGridLayout::minimumSize().height()};
}

int FieldGrid::heightForWidth(int width) const
{
    arrangeFor(width);
    return QGridLayout::sizeHint().height();
}

int FieldGrid::minimumHeightForWidth(int width) const
{
    arrangeFor(width);
    return QGridLayout::minimumSize().height();
}

} // namespace bothways::app
