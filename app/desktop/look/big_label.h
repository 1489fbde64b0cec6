// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

class QFont;

namespace bothways::app {

/// Whether lines may break as they are drawn: Qt does so behind a stroke, too ("km/h").
enum class Lines { several, one };
/// Pixel size of the largest font, `most` at most, in which `text` fits into `room`, broken between
/// words only. At least kLeastPx, fitting or not.
inline constexpr int kLeastPx = 11;
[[nodiscard]] int fittingPx(const QString& text, const QFont& font, const QSize& room, int most,
                            Lines lines = Lines::several);
/// Whether it does fit in that size.
[[nodiscard]] bool fits(const QString& text, const QFont& font, const QSize& room, int px,
                        Lines lines = Lines::several);

/// Words that fill the room they are given, in the largest type that fits.
class BigLabel final : public QLabel {
    Q_OBJECT

public:
    /// @param most  share of the window's height that a line may have
    explicit BigLabel(double most, QWidget* parent = nullptr);

    void setWords(const QString& words);
    /// Nothing is cut.
    [[nodiscard]] bool isWhole() const;
    [[nodiscard]] QSize sizeHint() const override { return {1, 1}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, 1}; }
    // The room decides on the type, never the type on the room.
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }
    [[nodiscard]] int heightForWidth(int) const override { return -1; }
    void setBold(bool bold);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QSize room() const; ///< for the words: what frame and margin leave
    void refit();
    double m_most;
    bool m_fitting = false;
};

} // namespace bothways::app
