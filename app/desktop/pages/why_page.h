// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/pages/result_view.h"

class QPushButton;
class QTextBrowser;

namespace bothways::app {

/// "Why this verdict": the arithmetic of this very study, to read and to hand on.
class WhyPage final : public ResultView {
    Q_OBJECT

public:
    explicit WhyPage(QWidget* parent = nullptr);
    ~WhyPage() override;

    /// The page as text for a forum (Markdown, tables included), and as HTML.
    [[nodiscard]] QString asText() const;
    [[nodiscard]] QString asHtml() const;
    void copyText();
    void copyHtml();

protected:
    void refresh() override;

private:
    QTextBrowser* m_browser = nullptr;
    QPushButton* m_copyText = nullptr;
    QPushButton* m_copyHtml = nullptr;
    QString m_html;
};

} // namespace bothways::app
