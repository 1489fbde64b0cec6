// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGridLayout>

#include <vector>

namespace bothways::app {

/// Sections of fields, each field below its label: four beside each other with the section's
/// heading before them. Where that does not fit the headings go first, and then columns: a narrow
/// panel is read downwards and not sideways.
class FieldGrid final : public QGridLayout {
public:
    explicit FieldGrid(QWidget* parent);

    void beginSection(QWidget* heading);
    /// @param span  so many columns wide
    void addField(QWidget* label, QWidget* editor, int span);

    void setGeometry(const QRect& rect) override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] int minimumHeightForWidth(int width) const override;

private:
    struct Field {
        QWidget* label;
        QWidget* editor;
        int span;
    };
    struct Section {
        QWidget* heading;
        std::vector<Field> fields;
    };
    struct Place {
        int row, column;
    };
    struct Arrangement {
        int columns;
        bool headings;
        bool operator==(const Arrangement&) const = default;
    };

    /// Where the fields of a section stand, its rows counted from 0.
    [[nodiscard]] static std::vector<Place> placesOf(const Section& section, int columns);
    /// The least width that they take so.
    [[nodiscard]] int needed(Arrangement arrangement) const;
    void arrangeFor(int width) const;
    void arrange(Arrangement arrangement);

    std::vector<Section> m_sections;
    Arrangement m_now{0, false}; ///< as they stand; no columns: not yet
};

} // namespace bothways::app
