// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGridLayout>

#include <vector>

namespace bothways::app {

/// Sections of fields, each field below its label: up to four beside each other, and fewer where
/// that many do not fit, so that a narrow panel is read downwards and not sideways.
class FieldGrid final : public QGridLayout {
public:
    explicit FieldGrid(QWidget* parent);

    /// What stands above the sections: a title, words beside it, and something below the words.
    void setTop(QWidget* title, QWidget* words, QWidget* belowWords);
    void beginSection(QWidget* heading);
    /// @param span  so many columns wide
    void addField(QWidget* label, QWidget* editor, int span);
    /// What ends a section: from the last field on to the edge, or below it.
    void addRest(QWidget* rest);

    void setGeometry(const QRect& rect) override;
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] int minimumHeightForWidth(int width) const override;

private:
    struct Field {
        QWidget* label; ///< null: none
        QWidget* editor;
        int span;
        bool toTheEdge;
    };
    struct Section {
        QWidget* heading;
        std::vector<Field> fields;
    };
    struct Place {
        int row, column, span;
    };

    /// Where the fields of a section stand, its rows counted from 0.
    [[nodiscard]] static std::vector<Place> placesOf(const Section& section, int columns);
    /// The least width with so many columns.
    [[nodiscard]] int needed(int columns) const;
    void arrangeFor(int width) const;
    void arrange(int columns);

    QWidget* m_title = nullptr;
    QWidget* m_words = nullptr;
    QWidget* m_belowWords = nullptr;
    std::vector<Section> m_sections;
    int m_columns = 0; ///< as they stand now; 0: not yet
};

} // namespace bothways::app
