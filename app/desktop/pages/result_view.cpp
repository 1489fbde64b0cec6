// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/result_view.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// Lies over the page and pales it; lets the mouse through.
class Veil final : public QWidget {
public:
    explicit Veil(QWidget* parent) : QWidget(parent)
    {
        setAttribute(Qt::WA_TransparentForMouseEvents);
        setFocusPolicy(Qt::NoFocus);
        hide();
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        constexpr int kPale = 120; // of 255: clearly grey, still readable
        QColor colour = palette().color(QPalette::Window);
        colour.setAlpha(kPale);
        QPainter(this).fillRect(rect(), colour);
    }
};

} // namespace

ResultView::ResultView(QWidget* parent) : QWidget(parent)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_nothing = new QLabel;
    m_nothing->setObjectName(QStringLiteral("nothing"));
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setWordWrap(true);
    layout->addWidget(m_nothing);
    m_veil = new Veil(this);
}

ResultView::~ResultView() = default;

void ResultView::setContent(QWidget* content)
{
    m_content = content;
    layout()->addWidget(content);
    m_veil->raise();
    update();
}

void ResultView::setResult(std::shared_ptr<const ResultSet> result)
{
    const bool isNew = m_result != result;
    m_result = std::move(result);
    setRecomputing(false);
    if (isNew)
        update();
}

void ResultView::setUnits(const UnitsShown& units)
{
    if (m_units == units)
        return;
    m_units = units;
    update();
}

void ResultView::setTheme(const Theme& theme)
{
    if (m_theme == theme)
        return;
    m_theme = theme;
    update();
}

void ResultView::setRecomputing(bool recomputing)
{
    m_recomputing = recomputing && m_result;
    m_veil->setGeometry(rect());
    m_veil->setVisible(m_recomputing);
    setAccessibleDescription(m_recomputing ? tr("The result is being computed anew.") : QString());
}

void ResultView::update()
{
    if (m_content == nullptr)
        return;
    m_content->setVisible(m_result != nullptr);
    m_nothing->setVisible(!m_result);
    m_nothing->setText(tr("There is no result yet."));
    if (m_result)
        refresh();
}

void ResultView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        update();
    QWidget::changeEvent(event);
}

void ResultView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_veil->setGeometry(rect());
}

} // namespace bothways::app
