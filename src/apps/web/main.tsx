import './style/fonts.css'
import './style/base.css'
import './style/head.css'
import './style/chart.css'
import './style/ledger.css'
import './style/scales.css'
import './style/narrow.css'
import './style/offline.css'
import './style/reading.css'
import './style/print.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { OfflineNote } from './offline/offline-note.tsx'
import { DefectNote } from './page/defect-note.tsx'
import { OpenPage } from './page/open-page.tsx'

const place = document.getElementById('desk')
if (place !== null)
  createRoot(place).render(
    <StrictMode>
      <DefectNote>
        <OfflineNote />
        <OpenPage />
      </DefectNote>
    </StrictMode>,
  )
