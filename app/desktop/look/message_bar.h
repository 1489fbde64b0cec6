// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <QFrame>

#include <functional>

class QLabel;
class QPushButton;

namespace bothways::app {

/// One sentence above the work, that waits until it has been read and is in nobody's way.
class MessageBar final : public QFrame {
    Q_OBJECT

public:
    enum class Kind { news, problem };

    /// A button beside the sentence; without words there is none.
    struct Offer {
        QString words;
        std::function<void()> done;
    };

    explicit MessageBar(QWidget* parent = nullptr);

    void say(Kind kind, const QString& sentence, const Offer& offer = {},
             const Offer& otherwise = {});
    /// What went wrong, where, and how much more of it there is.
    void say(const Language& in, const core::Error& error);
    [[nodiscard]] QString sentence() const;

protected:
    void changeEvent(QEvent* event) override;

private:
    void restyle();
    void put(QPushButton* button, const Offer& offer);

    Kind m_kind = Kind::news;
    QLabel* m_sign;
    QLabel* m_sentence;
    QPushButton* m_offer;
    QPushButton* m_otherwise;
};

} // namespace bothways::app
