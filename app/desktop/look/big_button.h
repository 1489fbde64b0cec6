// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"

#include <QAbstractButton>

#include <memory>
#include <vector>

namespace bothways::app {

inline constexpr Qt::Key kNoKey = Qt::Key(0);

/// A button for cold hands: fills its room, its text in the largest type that fits, the key that
/// presses it in a corner. The key is pressed by the page, see RoadsidePage.
class BigButton final : public QAbstractButton {
    Q_OBJECT

public:
    enum class Kind {
        primary, ///< what comes next
        plain,
        quiet ///< always there
    };
    /// Buttons that have one size of type, that of the longest text among them.
    using Group = std::shared_ptr<std::vector<BigButton*>>;

    BigButton(Kind kind, const char* name, Qt::Key key = kNoKey, QWidget* parent = nullptr);
    ~BigButton() override;

    void setGroup(const Group& group);
    void setKind(Kind kind);
    void setKey(Qt::Key key) { m_key = key; }
    [[nodiscard]] Qt::Key key() const { return m_key; }
    [[nodiscard]] QString keyText() const;
    /// @param caption  a small line above the text; may be empty
    void setWords(const QString& text, const QString& caption = {});
    [[nodiscard]] QString caption() const { return m_caption; }
    void setTheme(const Theme& theme);
    /// Share of the window's height that a line of the text may have.
    void setMost(double most);

    /// Nothing is cut: text, caption, key.
    [[nodiscard]] bool isWhole() const;
    [[nodiscard]] int textPx() const; ///< of the text, as painted
    /// Contrast of the text on the button as it is now.
    [[nodiscard]] double textContrast() const;
    [[nodiscard]] QSize sizeHint() const override { return {1, 1}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, 1}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Look {
        QColor fill, ink, edge;
    };
    [[nodiscard]] Look look() const;
    struct Places {
        QRect text, caption, key;
        int captionPx, keyPx;
    };
    [[nodiscard]] Places places() const;
    [[nodiscard]] int ownPx() const;
    [[nodiscard]] QFont textFont(int px) const;

    Kind m_kind;
    Qt::Key m_key;
    QString m_caption;
    Theme m_theme = Theme::light();
    double m_most = 0.09;
    Group m_group;
};

} // namespace bothways::app
