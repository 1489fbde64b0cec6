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

void FieldGrid::setTop(QWidget* title, QWidget* words, QWidget* belowWords)
{
    m_title = title;
    m_words = words;
    m_belowWords = belowWords;
    m_columns = 0;
}

void FieldGrid::beginSection(QWidget* heading)
{
    m_sections.push_back({heading, {}});
    m_columns = 0;
}

void FieldGrid::addField(QWidget* label, QWidget* editor, int span)
{
    m_sections.back().fields.push_back({label, editor, span, false});
    m_columns = 0;
}

void FieldGrid::addRest(QWidget* rest)
{
    m_sections.back().fields.push_back({nullptr, rest, 2, true});
    m_columns = 0;
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
        places.push_back({row, column, field.toTheEdge ? columns + 1 - column : field.span});
        column += field.span;
    }
    return places;
}

int FieldGrid::needed(int columns) const
{
    const int gap = horizontalSpacing();
    std::vector<int> widths(static_cast<std::size_t>(columns) + 1, 0);
    for (const bool wide : {false, true}) // first each for itself, then those that take several
        for (const Section& section : m_sections) {
            widths[0] = std::max(widths[0], leastWidth(section.heading));
            const std::vector<Place> places = placesOf(section, columns);
            for (std::size_t i = 0; i < places.size(); ++i) {
                if ((places[i].span > 1) != wide)
                    continue;
                const Field& field = section.fields[i];
                const int wanted = std::max(leastWidth(field.label), leastWidth(field.editor));
                const auto first = widths.begin() + places[i].column;
                const auto end = first + places[i].span;
                const int had = std::accumulate(first, end, gap * (places[i].span - 1));
                *(end - 1) += std::max(0, wanted - had);
            }
        }
    const QMargins around = contentsMargins();
    return std::accumulate(widths.begin(), widths.end(), gap * columns) + around.left() +
           around.right();
}

void FieldGrid::arrange(int columns)
{
    m_columns = columns;
    while (QLayoutItem* item = takeAt(0))
        delete item;
    for (int column = 1; column <= kMostColumns; ++column)
        setColumnStretch(column, column <= columns ? 1 : 0);
    addWidget(m_title, 0, 0, 1, 2);
    addWidget(m_words, 0, 2, 1, columns - 1);
    addWidget(m_belowWords, 1, 2, 1, columns - 1);
    int row = 2; // a row of labels, and one of editors
    for (const Section& section : m_sections) {
        addWidget(section.heading, row, 0);
        const std::vector<Place> places = placesOf(section, columns);
        for (std::size_t i = 0; i < places.size(); ++i) {
            const auto& [down, column, span] = places[i];
            const Field& field = section.fields[i];
            if (field.label)
                addWidget(field.label, row + 2 * down, column, 1, span);
            addWidget(field.editor, row + 2 * down + 1, column, 1, span);
        }
        row += places.empty() ? 2 : 2 * (places.back().row + 1);
    }
}

/// Asked how high it is, a layout may have to turn, as when it is placed.
void FieldGrid::arrangeFor(int width) const
{
    int columns = kMostColumns;
    while (columns > kFewestColumns && needed(columns) > width)
        --columns;
    if (columns != m_columns)
        const_cast<FieldGrid*>(this)->arrange(columns);
}

void FieldGrid::setGeometry(const QRect& rect)
{
    arrangeFor(rect.width());
    QGridLayout::setGeometry(rect);
}

QSize FieldGrid::minimumSize() const
{
    return {needed(kFewestColumns), QGridLayout::minimumSize().height()};
}

int FieldGrid::heightForWidth(int width) const
{
    arrangeFor(width);
    return QGridLayout::heightForWidth(width);
}

int FieldGrid::minimumHeightForWidth(int width) const
{
    arrangeFor(width);
    return QGridLayout::minimumHeightForWidth(width);
}

} // namespace bothways::app
